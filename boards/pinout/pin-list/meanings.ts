import type { Job } from '../../signals/signal';
import type { SignalId } from '../../signals/signals';

/** What a word says of a pin: its signal, that none stands there, or that it is the ground of a job. */
export type Said = SignalId | 'no-pin' | `ground of ${Job}`;

/** What a word means bare, and with the sign that stands beside it. */
export interface Meaning {
  readonly bare?: Said;
  readonly plus?: Said;
  readonly minus?: Said;
}

/** A switch to ground: a minus marks the side of the ground. */
function input(signal: SignalId, job: Job): Meaning {
  return { bare: signal, plus: signal, minus: `ground of ${job}` };
}

function pair(plus: Said, minus: Said): Meaning {
  return { plus, minus };
}

function alone(said: Said): Meaning {
  return { bare: said };
}

/**
 * Every meaning that a word can have. A word without an entry for its sign is not settled by itself: what
 * stands beside it has to say (header-rules.ts). Common practice, no source, where signals.ts names none.
 */
export const MEANINGS = {
  'power-switch': input('power-switch-input', 'power-switch'),
  'reset-switch': input('reset-switch-input', 'reset-switch'),
  'case-open': input('case-open-input', 'case-open'),
  'key-lock': input('key-lock-input', 'key-lock'),
  sensor: input('sensor-input', 'sensor'),
  'clear-settings': input('clear-settings', 'clear-settings'),
  'power-led': pair('power-led-feed', 'power-led-sink'),
  'drive-led': pair('drive-led-feed', 'drive-led-sink'),
  'message-led': pair('message-led-feed', 'message-led-sink'),
  speaker: { bare: 'speaker-drive', plus: 'speaker-feed', minus: 'speaker-drive' },
  'speaker-ground': alone('ground of speaker'),
  'some-led': {},
  'some-sign': {},

  ground: { bare: 'ground', minus: 'ground' },
  shield: alone('shield'),
  key: alone('no-pin'),
  'no-connection': alone('no-connection'),
  reserved: alone('reserved'),
  'some-supply': {},
  /** "PWR": a supply on most headers, the power switch among switches and LEDs. */
  'some-power': {},
  '3v3': { bare: 'supply-3v3', plus: 'supply-3v3' },
  '5v': { bare: 'supply-5v', plus: 'supply-5v', minus: 'supply-minus-5v' },
  '5v-standby': { bare: 'supply-5v-standby', plus: 'supply-5v-standby' },
  '12v': { bare: 'supply-12v', plus: 'supply-12v', minus: 'supply-minus-12v' },
  'minus-5v': { bare: 'supply-minus-5v', minus: 'supply-minus-5v' },
  'minus-12v': { bare: 'supply-minus-12v', minus: 'supply-minus-12v' },

  'usb-supply': { bare: 'usb-vbus', plus: 'usb-vbus' },
  'usb-data': pair('usb-d-plus', 'usb-d-minus'),
  'usb-ground': { bare: 'ground of usb2', minus: 'ground of usb2' },
  'over-current': alone('usb-over-current'),
  'usb3-receive': pair('usb3-ssrx-plus', 'usb3-ssrx-minus'),
  'usb3-send': pair('usb3-sstx-plus', 'usb3-sstx-minus'),
  'usb3-supply': { bare: 'usb3-vbus', plus: 'usb3-vbus' },
  'usb3-ground': alone('ground of usb3'),
  'usb3-identity': alone('no-connection'),
  'usbc-supply': { bare: 'usbc-vbus', plus: 'usbc-vbus' },
  'usbc-send-1': pair('usbc-tx1-plus', 'usbc-tx1-minus'),
  'usbc-receive-1': pair('usbc-rx1-plus', 'usbc-rx1-minus'),
  'usbc-send-2': pair('usbc-tx2-plus', 'usbc-tx2-minus'),
  'usbc-receive-2': pair('usbc-rx2-plus', 'usbc-rx2-minus'),
  'usbc-configuration-1': alone('usbc-cc1'),
  'usbc-configuration-2': alone('usbc-cc2'),
  'usbc-sideband-1': alone('usbc-sbu1'),
  'usbc-sideband-2': alone('usbc-sbu2'),

  'ieee1394-a': pair('ieee1394-tpa-plus', 'ieee1394-tpa-minus'),
  'ieee1394-b': pair('ieee1394-tpb-plus', 'ieee1394-tpb-minus'),
  'ieee1394-supply': { bare: 'ieee1394-power', plus: 'ieee1394-power' },

  dcd: alone('serial-dcd'),
  dsr: alone('serial-dsr'),
  rxd: alone('serial-rxd'),
  rts: alone('serial-rts'),
  txd: alone('serial-txd'),
  cts: alone('serial-cts'),
  dtr: alone('serial-dtr'),
  ri: alone('serial-ri'),

  'mic-left': alone('hd-mic-left'),
  'mic-right': alone('hd-mic-right'),
  'phones-left': alone('hd-phones-left'),
  'phones-right': alone('hd-phones-right'),
  presence: { bare: 'hd-presence', minus: 'hd-presence' },
  'sense-send': alone('hd-sense-send'),
  'mic-sense': alone('hd-sense1-return'),
  'phones-sense': alone('hd-sense2-return'),
  mic: { bare: 'ac97-mic', plus: 'ac97-mic' },
  'mic-bias': alone('ac97-mic-bias'),
  'out-left': alone('ac97-out-left'),
  'out-right': alone('ac97-out-right'),
  'return-left': alone('ac97-return-left'),
  'return-right': alone('ac97-return-right'),
  'audio-supply': { bare: 'ac97-supply', plus: 'ac97-supply' },
  'phones-on': alone('ac97-phones-on'),
  'audio-ground': { bare: 'ground', minus: 'ground' },

  'fan-supply': { bare: 'fan-supply', plus: 'fan-supply' },
  'fan-tach': alone('fan-tach'),
  'fan-pwm': alone('fan-pwm'),
  'fan-ground': { bare: 'ground of fan', minus: 'ground of fan' },
  sense: {},

  'ps-on': alone('ps-on'),
  'power-ok': alone('power-ok'),
  'card-sense': alone('card-sense'),
  'card-sense-0': alone('card-sense0'),
  'card-sense-1': alone('card-sense1'),
  'drive-spin-up': alone('drive-spin-up'),
  'drive-power-disable': alone('drive-power-disable'),
  'sata-a': pair('sata-a-plus', 'sata-a-minus'),
  'sata-b': pair('sata-b-plus', 'sata-b-minus'),
  'some-send': pair('sata-a-plus', 'sata-a-minus'),
  'some-receive': pair('sata-b-plus', 'sata-b-minus'),

  /** Words of the trade for which there is no signal in the list. */
  elsewhere: alone('unknown'),
} as const satisfies Readonly<Record<string, Meaning>>;

export type MeaningId = keyof typeof MEANINGS;

/** The same record, for a meaning that is only known at run time. */
export function meaningOf(id: MeaningId): Meaning {
  return MEANINGS[id];
}
