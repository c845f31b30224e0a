import type { ConnectorType } from '../connector-type';
import { AUDIO_CONNECTORS } from './audio';
import { DRIVE_CONNECTORS } from './drive';
import { FAN_CONNECTORS } from './fan';
import { JUMPER_CONNECTORS } from './jumpers';
import { PANEL_CONNECTORS } from './panel';
import { POWER_CONNECTORS } from './power';
import { SERIAL_AND_1394_CONNECTORS } from './serial-and-1394';
import { SPEAKER_CONNECTORS } from './speaker';
import { USB_CONNECTORS } from './usb';

/** Every connector of the library, in the order a person meets them on a board: small first. */
export const CONNECTOR_TYPES: readonly ConnectorType[] = [
  ...PANEL_CONNECTORS,
  ...SPEAKER_CONNECTORS,
  ...JUMPER_CONNECTORS,
  ...USB_CONNECTORS,
  ...AUDIO_CONNECTORS,
  ...SERIAL_AND_1394_CONNECTORS,
  ...FAN_CONNECTORS,
  ...DRIVE_CONNECTORS,
  ...POWER_CONNECTORS,
];

/** A connector of the library. An id that it lacks is a bug of the caller and throws; ids come from its own list. */
export function connectorTypeOf(id: string): ConnectorType {
  const type = CONNECTOR_TYPES.find((candidate) => candidate.id === id);
  if (type === undefined) throw new Error(`No connector type ${id} in the library`);
  return type;
}
