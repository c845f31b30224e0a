import type { PartKind, Terminal } from './part-kind';
import type { SignalId } from './signals';

const TRADE = 'common practice, no source';
const PANEL = 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2';

function terminal(id: string, name: string, ...wants: SignalId[]): Terminal {
  return { id, name, wants };
}

function switchLegs(input: SignalId): readonly Terminal[] {
  return [terminal('a', 'first leg', input), terminal('b', 'second leg', 'ground')];
}

const LEGS = ['a', 'b'] as const;

/** Parts at the far end of the small leads: what each wire is for. */
export const PART_KINDS = [
  {
    id: 'power-switch',
    name: 'power switch',
    job: 'power-switch',
    terminals: switchLegs('power-switch-input'),
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'closes-when-pressed',
    source: PANEL,
  },
  {
    id: 'reset-switch',
    name: 'reset switch',
    job: 'reset-switch',
    terminals: switchLegs('reset-switch-input'),
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'closes-when-pressed',
    source: PANEL,
  },
  {
    id: 'electronic-power-switch',
    name: 'electronic power switch',
    job: 'power-switch',
    terminals: switchLegs('power-switch-input'),
    reversed: 'dead',
    path: 'one-way',
    source: TRADE,
  },
  {
    id: 'power-led',
    name: 'power LED',
    job: 'power-led',
    reversed: 'dark',
    path: 'one-way',
    source: PANEL,
    terminals: [
      terminal('anode', '+', 'power-led-feed'),
      terminal('cathode', '−', 'power-led-sink', 'ground'),
    ],
  },
  {
    id: 'two-colour-power-led',
    name: 'two-colour power LED',
    job: 'power-led',
    reversed: 'other-colour',
    path: 'one-way',
    source: PANEL,
    terminals: [
      terminal('first', 'first colour', 'power-led-feed'),
      terminal('second', 'second colour', 'power-led-sink'),
    ],
  },
  {
    id: 'drive-led',
    name: 'drive LED',
    job: 'drive-led',
    reversed: 'dark',
    path: 'one-way',
    source: PANEL,
    terminals: [terminal('anode', '+', 'drive-led-feed'), terminal('cathode', '−', 'drive-led-sink')],
  },
  {
    id: 'message-led',
    name: 'message LED',
    job: 'message-led',
    reversed: 'dark',
    path: 'one-way',
    source: TRADE,
    terminals: [
      terminal('anode', '+', 'message-led-feed'),
      terminal('cathode', '−', 'message-led-sink', 'ground'),
    ],
  },
  {
    id: 'speaker',
    name: 'speaker',
    job: 'speaker',
    exchangeable: ['plus', 'minus'],
    reversed: 'nothing',
    path: 'low-resistance',
    source: TRADE,
    terminals: [terminal('plus', '+', 'speaker-feed', 'supply-5v'), terminal('minus', '−', 'speaker-drive')],
  },
  {
    id: 'buzzer',
    name: 'buzzer',
    job: 'speaker',
    reversed: 'dead',
    path: 'load',
    source: TRADE,
    terminals: [terminal('plus', '+', 'speaker-feed', 'supply-5v'), terminal('minus', '−', 'speaker-drive')],
  },
  {
    id: 'case-open-switch',
    name: 'case-open switch',
    job: 'case-open',
    terminals: switchLegs('case-open-input'),
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'closes-when-pressed',
    source: 'board product guides',
  },
  {
    id: 'key-lock',
    name: 'key lock',
    job: 'key-lock',
    terminals: switchLegs('key-lock-input'),
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'closes-when-pressed',
    source: TRADE,
  },
  {
    id: 'sensor',
    name: 'temperature sensor',
    job: 'sensor',
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'load',
    terminals: [terminal('a', 'first leg', 'sensor-input'), terminal('b', 'second leg', 'ground')],
    source: TRADE,
  },
  {
    id: 'jumper-cap',
    name: 'jumper cap',
    job: 'clear-settings',
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'low-resistance',
    source: TRADE,
    terminals: [terminal('a', 'first side'), terminal('b', 'second side')],
  },
  {
    id: 'usb2-port',
    name: 'USB 2.0 port',
    job: 'usb2',
    reversed: 'harm',
    path: 'lines',
    source: 'Universal Serial Bus 2.0, 6.4 and 7.2',
    terminals: [
      terminal('vbus', '+5 V', 'usb-vbus'),
      terminal('d-minus', 'D−', 'usb-d-minus'),
      terminal('d-plus', 'D+', 'usb-d-plus'),
      terminal('ground', 'ground', 'ground'),
      { id: 'shield', name: 'shield', wants: ['ground', 'shield', 'no-connection'], spare: true },
    ],
  },
  {
    id: 'usb3-port',
    name: 'USB 3 port',
    job: 'usb3',
    reversed: 'harm',
    path: 'lines',
    source: 'USB 3 internal connector, as listed in a board manual (read in secondary)',
    terminals: [
      terminal('vbus', '+5 V', 'usb3-vbus'),
      terminal('d-minus', 'D−', 'usb3-d-minus'),
      terminal('d-plus', 'D+', 'usb3-d-plus'),
      terminal('ground', 'ground', 'ground'),
      terminal('ssrx-minus', 'SSRX−', 'usb3-ssrx-minus'),
      terminal('ssrx-plus', 'SSRX+', 'usb3-ssrx-plus'),
      terminal('sstx-minus', 'SSTX−', 'usb3-sstx-minus'),
      terminal('sstx-plus', 'SSTX+', 'usb3-sstx-plus'),
      { id: 'drain', name: 'drain', wants: ['ground', 'shield'], spare: true },
    ],
  },
  {
    id: 'usb-c-port',
    name: 'USB Type-C port',
    job: 'usb-c',
    reversed: 'harm',
    path: 'lines',
    source: 'USB Type-C front-panel header (from memory)',
    terminals: [
      terminal('vbus', '+5 V', 'usbc-vbus'),
      terminal('ground', 'ground', 'ground'),
      terminal('tx1-plus', 'TX1+', 'usbc-tx1-plus'),
      terminal('tx1-minus', 'TX1−', 'usbc-tx1-minus'),
      terminal('rx1-plus', 'RX1+', 'usbc-rx1-plus'),
      terminal('rx1-minus', 'RX1−', 'usbc-rx1-minus'),
      terminal('tx2-plus', 'TX2+', 'usbc-tx2-plus'),
      terminal('tx2-minus', 'TX2−', 'usbc-tx2-minus'),
      terminal('rx2-plus', 'RX2+', 'usbc-rx2-plus'),
      terminal('rx2-minus', 'RX2−', 'usbc-rx2-minus'),
      terminal('cc1', 'CC1', 'usbc-cc1'),
      terminal('cc2', 'CC2', 'usbc-cc2'),
      terminal('sbu1', 'SBU1', 'usbc-sbu1'),
      terminal('sbu2', 'SBU2', 'usbc-sbu2'),
      terminal('d-minus', 'D−', 'usbc-d-minus'),
      terminal('d-plus', 'D+', 'usbc-d-plus'),
    ],
  },
  {
    id: 'ieee1394-port',
    name: '1394 port',
    job: 'ieee1394',
    reversed: 'harm',
    path: 'lines',
    source: 'IEEE 1394a header, as listed in a board product guide',
    terminals: [
      terminal('tpa-plus', 'TPA+', 'ieee1394-tpa-plus'),
      terminal('tpa-minus', 'TPA−', 'ieee1394-tpa-minus'),
      terminal('tpb-plus', 'TPB+', 'ieee1394-tpb-plus'),
      terminal('tpb-minus', 'TPB−', 'ieee1394-tpb-minus'),
      terminal('power', '+12 V', 'ieee1394-power'),
      terminal('ground', 'ground', 'ground'),
      { id: 'shield', name: 'shield', wants: ['ground', 'shield'], spare: true },
    ],
  },
  {
    id: 'serial-port',
    name: 'serial port',
    job: 'serial',
    reversed: 'dead',
    path: 'lines',
    source: 'TIA-232, 2x5 header order as listed in a single-board manual',
    terminals: [
      terminal('dcd', 'DCD', 'serial-dcd'),
      terminal('dsr', 'DSR', 'serial-dsr'),
      terminal('rxd', 'RXD', 'serial-rxd'),
      terminal('rts', 'RTS', 'serial-rts'),
      terminal('txd', 'TXD', 'serial-txd'),
      terminal('cts', 'CTS', 'serial-cts'),
      terminal('dtr', 'DTR', 'serial-dtr'),
      terminal('ri', 'RI', 'serial-ri'),
      terminal('ground', 'ground', 'ground'),
    ],
  },
  {
    id: 'hd-audio',
    name: 'HD audio jacks',
    job: 'hd-audio',
    reversed: 'dead',
    path: 'lines',
    source: 'HD audio panel header: Front Panel I/O Connectivity Design Guide v1.3, Figure 4',
    terminals: [
      terminal('mic-left', 'mic L', 'hd-mic-left'),
      terminal('mic-right', 'mic R', 'hd-mic-right'),
      terminal('phones-left', 'phones L', 'hd-phones-left'),
      terminal('phones-right', 'phones R', 'hd-phones-right'),
      terminal('ground', 'ground', 'ground'),
      terminal('presence', 'presence', 'hd-presence'),
      terminal('sense-send', 'sense', 'hd-sense-send'),
      terminal('sense1-return', 'mic sense', 'hd-sense1-return'),
      terminal('sense2-return', 'phones sense', 'hd-sense2-return'),
    ],
  },
  {
    id: 'ac97-audio',
    name: "AC'97 audio jacks",
    job: 'ac97-audio',
    reversed: 'dead',
    path: 'lines',
    source: "AC'97 panel header: Front Panel I/O Connectivity Design Guide v1.3, Table 6",
    terminals: [
      terminal('mic', 'mic', 'ac97-mic'),
      terminal('mic-bias', 'mic bias', 'ac97-mic-bias'),
      terminal('ground', 'ground', 'ground'),
      terminal('out-right', 'out R', 'ac97-out-right'),
      terminal('return-right', 'return R', 'ac97-return-right'),
      terminal('out-left', 'out L', 'ac97-out-left'),
      terminal('return-left', 'return L', 'ac97-return-left'),
      { id: 'supply', name: '+5 V', wants: ['ac97-supply', 'no-connection'], spare: true },
    ],
  },
  {
    id: 'fan',
    name: 'fan',
    job: 'fan',
    reversed: 'dead',
    path: 'load',
    source: '4-Wire PWM Controlled Fans Specification rev 1.3, Table 1',
    terminals: [
      terminal('ground', 'ground', 'ground'),
      terminal('supply', '+12 V', 'fan-supply', 'supply-12v'),
      { id: 'tach', name: 'tach', wants: ['fan-tach'], spare: true },
      { id: 'pwm', name: 'PWM', wants: ['fan-pwm'], spare: true },
    ],
  },
] as const satisfies readonly PartKind[];

export type PartKindId = (typeof PART_KINDS)[number]['id'];

export const PART_KIND_IDS: readonly PartKindId[] = PART_KINDS.map((kind) => kind.id);

const byId: ReadonlyMap<PartKindId, PartKind> = new Map(PART_KINDS.map((kind) => [kind.id, kind]));

/** The row of a part kind. Every id has one. */
export function partKindOf(id: PartKindId): PartKind {
  const kind = byId.get(id);
  if (kind === undefined) throw new Error(`No part kind ${id}`);
  return kind;
}
