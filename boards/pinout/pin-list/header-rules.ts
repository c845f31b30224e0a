import type { Job } from '../../signals/signal';
import type { SignalId } from '../../signals/signals';
import type { MeaningId, Said } from './meanings';

/** A word that means something else beside certain others. */
export interface HeaderRule {
  readonly words: readonly MeaningId[];
  /** Only with this sign; any where nothing is said. */
  readonly sign?: 'plus' | 'minus';
  readonly becomes: Said;
  /** One of these has to be on the header: what a pin is said to be, or a job that its heading names. */
  readonly beside: readonly (Job | SignalId)[];
  /** Anywhere on the header, or in the same line with nothing but open pins and grounds between. */
  readonly within: 'header' | 'line';
  /** Not where more pins of the header belong to one of these jobs. */
  readonly unless?: readonly Job[];
  /** Only on a connector with no more positions. */
  readonly atMost?: number;
  /** Whether the neighbours leave no doubt. */
  readonly sure: boolean;
}

const PANEL: readonly Job[] = ['reset-switch', 'drive-led', 'power-led'];
const USB2: readonly SignalId[] = ['usb-d-plus', 'usb-d-minus'];
const USB3: readonly SignalId[] = ['usb3-ssrx-plus', 'usb3-ssrx-minus', 'usb3-sstx-plus', 'usb3-sstx-minus'];
const TYPE_C: readonly SignalId[] = ['usbc-cc1', 'usbc-cc2', 'usbc-sbu1', 'usbc-sbu2'];
const SPEAKER: readonly SignalId[] = ['speaker-drive'];
const AC97: readonly SignalId[] = ['ac97-mic-bias', 'ac97-return-left', 'ac97-return-right', 'ac97-supply'];
const HD: readonly SignalId[] = [
  'hd-mic-left',
  'hd-mic-right',
  'hd-sense-send',
  'hd-sense1-return',
  'hd-sense2-return',
];
const FAN: readonly (Job | SignalId)[] = ['fan-tach', 'fan-pwm', 'fan'];

/**
 * How real headers settle words that say too little by themselves, the first rule that fits holding. The
 * makings of the headers: the tables that the library names; that nobody puts such words elsewhere:
 * common practice, no source.
 */
export const HEADER_RULES: readonly HeaderRule[] = [
  {
    words: ['some-power'],
    sign: 'minus',
    becomes: 'ground of power-switch',
    beside: PANEL,
    unless: ['power-switch'],
    within: 'header',
    sure: false,
  },
  {
    words: ['some-power'],
    becomes: 'power-switch-input',
    beside: PANEL,
    unless: ['power-switch'],
    within: 'header',
    sure: false,
  },

  {
    words: ['usb-supply', 'some-supply', 'some-power', '5v'],
    becomes: 'usbc-vbus',
    beside: TYPE_C,
    within: 'header',
    sure: true,
  },
  {
    words: ['usb-supply', 'some-supply', 'some-power', '5v'],
    becomes: 'usb3-vbus',
    beside: USB3,
    within: 'header',
    sure: true,
  },
  { words: ['usb-data'], sign: 'plus', becomes: 'usbc-d-plus', beside: TYPE_C, within: 'header', sure: true },
  {
    words: ['usb-data'],
    sign: 'minus',
    becomes: 'usbc-d-minus',
    beside: TYPE_C,
    within: 'header',
    sure: true,
  },
  { words: ['usb-data'], sign: 'plus', becomes: 'usb3-d-plus', beside: USB3, within: 'header', sure: true },
  { words: ['usb-data'], sign: 'minus', becomes: 'usb3-d-minus', beside: USB3, within: 'header', sure: true },
  { words: ['usb-ground'], becomes: 'ground of usb3', beside: USB3, within: 'header', sure: true },
  {
    words: ['some-supply', 'some-power', '5v'],
    becomes: 'usb-vbus',
    beside: USB2,
    within: 'header',
    sure: true,
  },

  // A coil lies between the 5 V of its own row and the pin that is driven.
  {
    words: ['5v', 'some-supply', 'some-power'],
    becomes: 'speaker-feed',
    beside: SPEAKER,
    within: 'line',
    sure: true,
  },
  {
    words: ['5v', 'some-supply', 'some-power'],
    becomes: 'speaker-feed',
    beside: [...SPEAKER, 'speaker'],
    within: 'header',
    atMost: 4,
    sure: true,
  },

  {
    words: ['5v', 'some-supply', 'some-power'],
    becomes: 'ac97-supply',
    beside: AC97,
    within: 'header',
    sure: true,
  },
  {
    words: ['phones-left'],
    becomes: 'ac97-out-left',
    beside: AC97,
    unless: ['hd-audio'],
    within: 'header',
    sure: true,
  },
  {
    words: ['phones-right'],
    becomes: 'ac97-out-right',
    beside: AC97,
    unless: ['hd-audio'],
    within: 'header',
    sure: true,
  },
  {
    words: ['out-left'],
    becomes: 'hd-phones-left',
    beside: HD,
    unless: ['ac97-audio'],
    within: 'header',
    sure: false,
  },
  {
    words: ['out-right'],
    becomes: 'hd-phones-right',
    beside: HD,
    unless: ['ac97-audio'],
    within: 'header',
    sure: false,
  },
  {
    words: ['mic'],
    becomes: 'hd-mic-left',
    beside: ['hd-mic-right'],
    unless: ['ac97-audio'],
    within: 'header',
    sure: false,
  },
  { words: ['sense'], becomes: 'hd-sense-send', beside: HD, within: 'header', sure: true },

  { words: ['sense'], becomes: 'fan-tach', beside: FAN, within: 'header', sure: true },
  { words: ['sense'], becomes: 'fan-tach', beside: ['supply-12v'], within: 'header', atMost: 4, sure: true },
  {
    words: ['sense'],
    becomes: 'card-sense',
    beside: ['supply-12v', 'card-sense0', 'card-power'],
    within: 'header',
    sure: false,
  },
  {
    words: ['mic-sense'],
    becomes: 'card-sense1',
    beside: ['card-sense0', 'supply-12v'],
    within: 'header',
    sure: true,
  },
  {
    words: ['12v', 'some-supply', 'some-power'],
    becomes: 'fan-supply',
    beside: FAN,
    unless: ['main-power'],
    within: 'header',
    sure: true,
  },

  {
    words: ['12v', 'some-supply', 'some-power', '5v'],
    becomes: 'ieee1394-power',
    beside: ['ieee1394-tpa-plus', 'ieee1394-tpb-plus', 'ieee1394'],
    within: 'header',
    sure: true,
  },
  {
    words: ['some-send'],
    sign: 'plus',
    becomes: 'usb3-sstx-plus',
    beside: USB3,
    within: 'header',
    sure: true,
  },
  {
    words: ['some-send'],
    sign: 'minus',
    becomes: 'usb3-sstx-minus',
    beside: USB3,
    within: 'header',
    sure: true,
  },
  {
    words: ['some-receive'],
    sign: 'plus',
    becomes: 'usb3-ssrx-plus',
    beside: USB3,
    within: 'header',
    sure: true,
  },
  {
    words: ['some-receive'],
    sign: 'minus',
    becomes: 'usb3-ssrx-minus',
    beside: USB3,
    within: 'header',
    sure: true,
  },
  {
    words: ['some-send'],
    becomes: 'serial-txd',
    beside: ['serial', 'serial-rts', 'serial-dcd', 'serial-dtr', 'serial-cts'],
    within: 'header',
    sure: true,
  },
  {
    words: ['some-receive'],
    becomes: 'serial-rxd',
    beside: ['serial', 'serial-rts', 'serial-dcd', 'serial-dtr', 'serial-cts'],
    within: 'header',
    sure: true,
  },

  {
    words: ['some-led'],
    sign: 'plus',
    becomes: 'drive-led-feed',
    beside: ['drive-led'],
    within: 'header',
    atMost: 4,
    sure: false,
  },
  {
    words: ['some-led'],
    sign: 'minus',
    becomes: 'drive-led-sink',
    beside: ['drive-led'],
    within: 'header',
    atMost: 4,
    sure: false,
  },
  {
    words: ['some-led'],
    sign: 'plus',
    becomes: 'power-led-feed',
    beside: ['power-led', 'key-lock'],
    within: 'header',
    atMost: 6,
    sure: false,
  },
  {
    words: ['some-led'],
    sign: 'minus',
    becomes: 'power-led-sink',
    beside: ['power-led', 'key-lock'],
    within: 'header',
    atMost: 6,
    sure: false,
  },
  {
    words: ['some-supply', 'some-power'],
    becomes: 'supply-5v',
    beside: ['drive-led-sink', 'power-led-sink', 'power-switch-input'],
    within: 'header',
    sure: false,
  },
];

/** Words at the head of a list, or of the connector, that tell its job. The first that fits holds. */
export const HEADING_WORDS: readonly { readonly pattern: RegExp; readonly job: Job }[] = [
  { pattern: /\b(?:fans?|pump)\b|fan\d|_fan/i, job: 'fan' },
  { pattern: /type.?c\b/i, job: 'usb-c' },
  { pattern: /usb\s?3/i, job: 'usb3' },
  { pattern: /usb/i, job: 'usb2' },
  { pattern: /1394/i, job: 'ieee1394' },
  { pattern: /ac.?97/i, job: 'ac97-audio' },
  { pattern: /audio/i, job: 'hd-audio' },
  { pattern: /speaker|buzzer|\bspk/i, job: 'speaker' },
  { pattern: /serial|\bcom\s?\d|rs.?232/i, job: 'serial' },
  { pattern: /intrusion|intruder|case open|chassis open/i, job: 'case-open' },
  { pattern: /(?:hdd?|disk|drive|ide)[ _-]?(?:activity[ _-]?)?led/i, job: 'drive-led' },
  { pattern: /p(?:owe|w)?r?[ _-]?led/i, job: 'power-led' },
  { pattern: /key.?lock/i, job: 'key-lock' },
  { pattern: /sata/i, job: 'sata-data' },
  { pattern: /pci.?e|graphics|card power/i, job: 'card-power' },
  { pattern: /main power|atx.{0,6}power|24.?pin/i, job: 'main-power' },
];
