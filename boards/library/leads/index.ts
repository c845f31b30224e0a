import type { LeadType } from '../lead-type';
import { ADAPTER_LEADS } from './adapters';
import { AUDIO_LEADS } from './audio';
import { DRIVE_LEADS } from './drive';
import { FAN_LEADS } from './fan';
import { JUMPER_LEADS } from './jumpers';
import { PANEL_BLOCK_LEADS } from './panel-blocks';
import { SERIAL_AND_1394_LEADS } from './serial-and-1394';
import { SPEAKER_LEADS } from './speaker';
import { SUPPLY_LEADS } from './supply';
import { SWITCH_AND_LED_LEADS } from './switches-and-leds';
import { USB2_LEADS } from './usb2';
import { USB3_AND_TYPE_C_LEADS } from './usb3-and-type-c';

/** Every lead of the library, in the order a person meets them in a case: small first. */
export const LEAD_TYPES: readonly LeadType[] = [
  ...SWITCH_AND_LED_LEADS,
  ...PANEL_BLOCK_LEADS,
  ...SPEAKER_LEADS,
  ...JUMPER_LEADS,
  ...USB2_LEADS,
  ...USB3_AND_TYPE_C_LEADS,
  ...AUDIO_LEADS,
  ...SERIAL_AND_1394_LEADS,
  ...FAN_LEADS,
  ...DRIVE_LEADS,
  ...SUPPLY_LEADS,
  ...ADAPTER_LEADS,
];
