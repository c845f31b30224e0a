import type { Signal } from './signal';

const PANEL = 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2';
const USB2 = 'Universal Serial Bus 2.0, internal header as listed in board product guides';
const USB3 = 'USB 3 internal connector, as listed in a board manual (read in secondary)';
const TYPE_C = 'USB Type-C front-panel header (from memory)';
const FIREWIRE = 'IEEE 1394a header, as listed in a board product guide';
const HD = 'HD audio panel header: Front Panel I/O Connectivity Design Guide v1.3, Figure 4';
const AC97 = "AC'97 panel header: Front Panel I/O Connectivity Design Guide v1.3, Table 6";
const ATX = 'microATX specification v1.2, Figure 8';
const CARD = 'ATX 3.0 power supply design guide (336521), Tables 5-4 and 5-5';
const FAN = '4-Wire PWM Controlled Fans Specification rev 1.3, Table 1';
const SATA = 'Serial ATA 1.0a data and power segments, as listed in a hardware handbook';
const SERIAL = 'TIA-232, 2x5 header order as listed in a single-board manual';
const TRADE = 'common practice, no source';

/** What every pin of a real machine can be. One row a signal: the only list of them. */
export const SIGNALS = [
  { id: 'unknown', name: 'unknown', nature: 'unknown', source: TRADE },
  { id: 'no-connection', name: 'not connected', nature: 'open', source: TRADE },
  { id: 'reserved', name: 'reserved', nature: 'open', source: PANEL },
  { id: 'ground', name: 'ground', nature: 'ground', source: ATX },
  { id: 'shield', name: 'shield', nature: 'ground', source: USB2 },

  { id: 'supply-3v3', name: '+3.3 V', nature: 'supply', volts: 3.3, source: ATX },
  { id: 'supply-5v', name: '+5 V', nature: 'supply', volts: 5, source: ATX },
  { id: 'supply-5v-standby', name: '+5 V standby', nature: 'supply', volts: 5, source: ATX },
  { id: 'supply-12v', name: '+12 V', nature: 'supply', volts: 12, source: ATX },
  { id: 'supply-minus-12v', name: '−12 V', nature: 'supply', volts: -12, source: ATX },
  { id: 'supply-minus-5v', name: '−5 V', nature: 'supply', volts: -5, source: ATX },

  { id: 'power-switch-input', name: 'power switch', nature: 'input', job: 'power-switch', source: PANEL },
  { id: 'reset-switch-input', name: 'reset', nature: 'input', job: 'reset-switch', source: PANEL },
  { id: 'drive-led-feed', name: 'drive LED +', nature: 'feed', job: 'drive-led', volts: 5, source: PANEL },
  { id: 'drive-led-sink', name: 'drive LED −', nature: 'sink', job: 'drive-led', source: PANEL },
  { id: 'power-led-feed', name: 'power LED +', nature: 'feed', job: 'power-led', volts: 5, source: PANEL },
  { id: 'power-led-sink', name: 'power LED −', nature: 'sink', job: 'power-led', source: PANEL },
  {
    id: 'message-led-feed',
    name: 'message LED +',
    nature: 'feed',
    job: 'message-led',
    volts: 5,
    source: TRADE,
  },
  { id: 'message-led-sink', name: 'message LED −', nature: 'sink', job: 'message-led', source: TRADE },
  { id: 'speaker-feed', name: 'speaker +5 V', nature: 'supply', job: 'speaker', volts: 5, source: TRADE },
  { id: 'speaker-drive', name: 'speaker', nature: 'sink', job: 'speaker', source: TRADE },
  {
    id: 'case-open-input',
    name: 'case open',
    nature: 'input',
    job: 'case-open',
    source: 'board product guides',
  },
  { id: 'key-lock-input', name: 'key lock', nature: 'input', job: 'key-lock', source: TRADE },
  { id: 'sensor-input', name: 'temperature sensor', nature: 'analogue', job: 'sensor', source: TRADE },
  { id: 'clear-settings', name: 'clear settings', nature: 'input', job: 'clear-settings', source: TRADE },

  { id: 'usb-vbus', name: 'USB +5 V', nature: 'supply', job: 'usb2', volts: 5, source: USB2 },
  { id: 'usb-d-minus', name: 'USB D−', nature: 'data', job: 'usb2', source: USB2 },
  { id: 'usb-d-plus', name: 'USB D+', nature: 'data', job: 'usb2', source: USB2 },
  { id: 'usb-over-current', name: 'over-current', nature: 'input', job: 'usb2', source: TRADE },
  { id: 'usb3-vbus', name: 'USB 3 +5 V', nature: 'supply', job: 'usb3', volts: 5, source: USB3 },
  { id: 'usb3-ssrx-minus', name: 'SSRX−', nature: 'data', job: 'usb3', source: USB3 },
  { id: 'usb3-ssrx-plus', name: 'SSRX+', nature: 'data', job: 'usb3', source: USB3 },
  { id: 'usb3-sstx-minus', name: 'SSTX−', nature: 'data', job: 'usb3', source: USB3 },
  { id: 'usb3-sstx-plus', name: 'SSTX+', nature: 'data', job: 'usb3', source: USB3 },
  { id: 'usb3-d-minus', name: 'D−', nature: 'data', job: 'usb3', source: USB3 },
  { id: 'usb3-d-plus', name: 'D+', nature: 'data', job: 'usb3', source: USB3 },
  { id: 'usbc-vbus', name: 'Type-C +5 V', nature: 'supply', job: 'usb-c', volts: 5, source: TYPE_C },
  { id: 'usbc-tx1-plus', name: 'TX1+', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-tx1-minus', name: 'TX1−', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-rx1-plus', name: 'RX1+', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-rx1-minus', name: 'RX1−', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-tx2-plus', name: 'TX2+', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-tx2-minus', name: 'TX2−', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-rx2-plus', name: 'RX2+', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-rx2-minus', name: 'RX2−', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-cc1', name: 'CC1', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-cc2', name: 'CC2', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-sbu1', name: 'SBU1', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-sbu2', name: 'SBU2', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-d-minus', name: 'D−', nature: 'data', job: 'usb-c', source: TYPE_C },
  { id: 'usbc-d-plus', name: 'D+', nature: 'data', job: 'usb-c', source: TYPE_C },

  { id: 'ieee1394-tpa-plus', name: 'TPA+', nature: 'data', job: 'ieee1394', source: FIREWIRE },
  { id: 'ieee1394-tpa-minus', name: 'TPA−', nature: 'data', job: 'ieee1394', source: FIREWIRE },
  { id: 'ieee1394-tpb-plus', name: 'TPB+', nature: 'data', job: 'ieee1394', source: FIREWIRE },
  { id: 'ieee1394-tpb-minus', name: 'TPB−', nature: 'data', job: 'ieee1394', source: FIREWIRE },
  {
    id: 'ieee1394-power',
    name: '1394 +12 V',
    nature: 'supply',
    job: 'ieee1394',
    volts: 12,
    source: FIREWIRE,
  },

  { id: 'serial-dcd', name: 'DCD', nature: 'data', job: 'serial', source: SERIAL },
  { id: 'serial-dsr', name: 'DSR', nature: 'data', job: 'serial', source: SERIAL },
  { id: 'serial-rxd', name: 'RXD', nature: 'data', job: 'serial', source: SERIAL },
  { id: 'serial-rts', name: 'RTS', nature: 'data', job: 'serial', source: SERIAL },
  { id: 'serial-txd', name: 'TXD', nature: 'data', job: 'serial', source: SERIAL },
  { id: 'serial-cts', name: 'CTS', nature: 'data', job: 'serial', source: SERIAL },
  { id: 'serial-dtr', name: 'DTR', nature: 'data', job: 'serial', source: SERIAL },
  { id: 'serial-ri', name: 'RI', nature: 'data', job: 'serial', source: SERIAL },

  { id: 'hd-mic-left', name: 'mic L', nature: 'analogue', job: 'hd-audio', source: HD },
  { id: 'hd-mic-right', name: 'mic R', nature: 'analogue', job: 'hd-audio', source: HD },
  { id: 'hd-phones-left', name: 'phones L', nature: 'analogue', job: 'hd-audio', source: HD },
  { id: 'hd-phones-right', name: 'phones R', nature: 'analogue', job: 'hd-audio', source: HD },
  { id: 'hd-presence', name: 'presence', nature: 'input', job: 'hd-audio', source: HD },
  { id: 'hd-sense-send', name: 'sense', nature: 'analogue', job: 'hd-audio', source: HD },
  { id: 'hd-sense1-return', name: 'mic sense', nature: 'analogue', job: 'hd-audio', source: HD },
  { id: 'hd-sense2-return', name: 'phones sense', nature: 'analogue', job: 'hd-audio', source: HD },
  { id: 'ac97-mic', name: 'mic', nature: 'analogue', job: 'ac97-audio', source: AC97 },
  { id: 'ac97-mic-bias', name: 'mic bias', nature: 'analogue', job: 'ac97-audio', source: AC97 },
  { id: 'ac97-out-right', name: 'out R', nature: 'analogue', job: 'ac97-audio', source: AC97 },
  { id: 'ac97-return-right', name: 'return R', nature: 'analogue', job: 'ac97-audio', source: AC97 },
  { id: 'ac97-out-left', name: 'out L', nature: 'analogue', job: 'ac97-audio', source: AC97 },
  { id: 'ac97-return-left', name: 'return L', nature: 'analogue', job: 'ac97-audio', source: AC97 },
  { id: 'ac97-supply', name: 'audio +5 V', nature: 'supply', job: 'ac97-audio', volts: 5, source: AC97 },
  { id: 'ac97-phones-on', name: 'phones on', nature: 'open', job: 'ac97-audio', source: AC97 },

  { id: 'fan-supply', name: 'fan +12 V', nature: 'supply', job: 'fan', volts: 12, source: FAN },
  { id: 'fan-tach', name: 'tach', nature: 'input', job: 'fan', source: FAN },
  { id: 'fan-pwm', name: 'PWM', nature: 'output', job: 'fan', source: FAN },

  { id: 'ps-on', name: 'PS_ON#', nature: 'input', job: 'main-power', source: ATX },
  { id: 'power-ok', name: 'PWR_OK', nature: 'output', job: 'main-power', source: ATX },
  { id: 'card-sense', name: 'sense', nature: 'input', job: 'card-power', source: CARD },
  { id: 'card-sense0', name: 'sense 0', nature: 'input', job: 'card-power', source: CARD },
  { id: 'card-sense1', name: 'sense 1', nature: 'input', job: 'card-power', source: CARD },
  { id: 'drive-spin-up', name: 'spin-up / activity', nature: 'input', job: 'drive-power', source: SATA },
  {
    id: 'drive-power-disable',
    name: 'power disable',
    nature: 'input',
    job: 'drive-power',
    source: 'Serial ATA 3.3, as told in an encyclopaedia',
  },
  { id: 'sata-a-plus', name: 'A+', nature: 'data', job: 'sata-data', source: SATA },
  { id: 'sata-a-minus', name: 'A−', nature: 'data', job: 'sata-data', source: SATA },
  { id: 'sata-b-plus', name: 'B+', nature: 'data', job: 'sata-data', source: SATA },
  { id: 'sata-b-minus', name: 'B−', nature: 'data', job: 'sata-data', source: SATA },
] as const satisfies readonly Signal[];

export type SignalId = (typeof SIGNALS)[number]['id'];

export const SIGNAL_IDS: readonly SignalId[] = SIGNALS.map((signal) => signal.id);

const byId: ReadonlyMap<SignalId, Signal> = new Map(SIGNALS.map((signal) => [signal.id, signal]));

/** The row of a signal. Every id has one. */
export function signalOf(id: SignalId): Signal {
  const signal = byId.get(id);
  if (signal === undefined) throw new Error(`No signal ${id}`);
  return signal;
}
