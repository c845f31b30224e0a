import type { Pin, PinSource } from '../../../../boards/document/connector';
import type { Grid } from '../../../../boards/document/grid';
import { singleRow, thereAndBack, zigZag } from '../../../../boards/library/grids';
import type { SignalId } from '../../../../boards/signals/signals';

/** What stands at a position; "no pin" where none does. A number or letter behind @ is the port. */
export type At = SignalId | 'no pin' | `${SignalId}@${string}`;

/** One pin of a layout: its label, what it is, and how a manual writes it. */
export type LayoutPin = readonly [label: string, is: At, word: string];

/** A header as a stranger may meet it. */
export interface Layout {
  readonly name: string;
  readonly grid: Grid;
  readonly source: PinSource;
  readonly pins: readonly LayoutPin[];
}

const MANUAL: PinSource = { kind: 'manual', where: 'as board manuals list it' };
const NOTES: PinSource = { kind: 'manual', where: 'as people who build machines write it down' };

/** Headers that many boards have, from manuals of several makers. */
export const KNOWN_LAYOUTS: readonly Layout[] = [
  {
    name: 'the panel with a supply on pin 9',
    grid: zigZag(5),
    source: MANUAL,
    pins: [
      ['1', 'drive-led-feed', 'Drive LED + (pull-up to 5 V)'],
      ['2', 'power-led-feed', 'Power LED + / green of two colours'],
      ['3', 'drive-led-sink', 'Drive LED -'],
      ['4', 'power-led-sink', 'Power LED - / yellow of two colours'],
      ['5', 'ground', 'GND (reset)'],
      ['6', 'power-switch-input', 'Power switch in'],
      ['7', 'reset-switch-input', 'Reset in'],
      ['8', 'ground', 'GND (power)'],
      ['9', 'supply-5v', '+5 V out'],
      ['10', 'no pin', 'Key (no pin)'],
    ],
  },
  {
    name: 'the panel with pin 9 reserved',
    grid: zigZag(5),
    source: NOTES,
    pins: [
      ['1', 'drive-led-feed', 'DRIVE LED+'],
      ['2', 'power-led-feed', 'POWER LED+'],
      ['3', 'drive-led-sink', 'DRIVE LED-'],
      ['4', 'power-led-sink', 'POWER LED-'],
      ['5', 'ground', 'RESET- (ground)'],
      ['6', 'power-switch-input', 'POWER SW+'],
      ['7', 'reset-switch-input', 'RESET+'],
      ['8', 'ground', 'POWER SW- (ground)'],
      ['9', 'no-connection', 'NC / reserved / CASE OPEN-'],
      ['10', 'no pin', 'no pin (key)'],
    ],
  },
  {
    name: 'a power LED three wide',
    grid: singleRow(3),
    source: MANUAL,
    pins: [
      ['1', 'power-led-feed', 'POWER LED+'],
      ['2', 'no pin', '(no pin)'],
      ['3', 'power-led-sink', 'POWER LED-'],
    ],
  },
  {
    name: 'a speaker four wide',
    grid: singleRow(4),
    source: MANUAL,
    pins: [
      ['1', 'speaker-feed', '+5V'],
      ['2', 'no-connection', 'NC'],
      ['3', 'no-connection', 'NC'],
      ['4', 'speaker-drive', 'Speaker signal'],
    ],
  },
  {
    name: 'HD audio',
    grid: zigZag(5),
    source: MANUAL,
    pins: [
      ['1', 'hd-mic-left', 'MIC L'],
      ['2', 'ground', 'Audio GND'],
      ['3', 'hd-mic-right', 'MIC R'],
      ['4', 'hd-presence', 'PRESENCE# (the panel grounds it)'],
      ['5', 'hd-phones-right', 'HP R'],
      ['6', 'hd-sense1-return', 'SENSE1 RETURN (mic)'],
      ['7', 'hd-sense-send', 'SENSE SEND'],
      ['8', 'no pin', 'KEY (no pin)'],
      ['9', 'hd-phones-left', 'HP L'],
      ['10', 'hd-sense2-return', 'SENSE2 RETURN (phones)'],
    ],
  },
  {
    name: "AC'97 audio on a header for both",
    grid: zigZag(5),
    source: MANUAL,
    pins: [
      ['1', 'ac97-mic', 'MIC'],
      ['2', 'ground', 'Audio GND'],
      ['3', 'ac97-mic-bias', 'MIC BIAS'],
      ['4', 'hd-presence', 'PRESENCE#'],
      ['5', 'ac97-out-right', 'OUT R'],
      ['6', 'ground', 'GND'],
      ['7', 'no-connection', 'NC'],
      ['8', 'no pin', 'KEY (no pin)'],
      ['9', 'ac97-out-left', 'OUT L'],
      ['10', 'ground', 'GND'],
    ],
  },
  {
    name: 'USB 2.0, two ports',
    grid: zigZag(5),
    source: MANUAL,
    pins: [
      ['1', 'usb-vbus@A', '+5V A'],
      ['2', 'usb-vbus@B', '+5V B'],
      ['3', 'usb-d-minus@A', 'D- A'],
      ['4', 'usb-d-minus@B', 'D- B'],
      ['5', 'usb-d-plus@A', 'D+ A'],
      ['6', 'usb-d-plus@B', 'D+ B'],
      ['7', 'ground@A', 'GND A'],
      ['8', 'ground@B', 'GND B'],
      ['9', 'no pin', 'KEY (no pin)'],
      ['10', 'no-connection', 'NC / over-current sense / shield'],
    ],
  },
  {
    name: 'USB 3, two ports, counted out and back',
    grid: thereAndBack(10),
    source: MANUAL,
    pins: [
      ['1', 'usb3-vbus@1', 'VBUS 1'],
      ['2', 'usb3-ssrx-minus@1', 'SSRX1-'],
      ['3', 'usb3-ssrx-plus@1', 'SSRX1+'],
      ['4', 'ground@1', 'GND'],
      ['5', 'usb3-sstx-minus@1', 'SSTX1-'],
      ['6', 'usb3-sstx-plus@1', 'SSTX1+'],
      ['7', 'ground@1', 'GND'],
      ['8', 'usb3-d-minus@1', 'D1-'],
      ['9', 'usb3-d-plus@1', 'D1+'],
      ['10', 'no-connection', 'NC / ID'],
      ['11', 'usb3-d-plus@2', 'D2+'],
      ['12', 'usb3-d-minus@2', 'D2-'],
      ['13', 'ground@2', 'GND'],
      ['14', 'usb3-sstx-plus@2', 'SSTX2+'],
      ['15', 'usb3-sstx-minus@2', 'SSTX2-'],
      ['16', 'ground@2', 'GND'],
      ['17', 'usb3-ssrx-plus@2', 'SSRX2+'],
      ['18', 'usb3-ssrx-minus@2', 'SSRX2-'],
      ['19', 'usb3-vbus@2', 'VBUS 2'],
      ['20', 'no pin', 'KEY (no pin)'],
    ],
  },
  {
    name: 'case open',
    grid: singleRow(2),
    source: MANUAL,
    pins: [
      ['1', 'case-open-input', 'CASE OPEN signal'],
      ['2', 'ground', 'GND'],
    ],
  },
  {
    name: 'a fan with three pins',
    grid: singleRow(3),
    source: MANUAL,
    pins: [
      ['1', 'ground', 'GND'],
      ['2', 'fan-supply', '+12V (or a controlled voltage)'],
      ['3', 'fan-tach', 'TACH'],
    ],
  },
  {
    name: 'a fan with four pins',
    grid: singleRow(4),
    source: MANUAL,
    pins: [
      ['1', 'ground', 'GND'],
      ['2', 'fan-supply', '+12V'],
      ['3', 'fan-tach', 'TACH'],
      ['4', 'fan-pwm', 'PWM'],
    ],
  },
];

/** The pin as it is set down, with the source of its layout. */
export function pinOfLayout({ source }: Layout, [label, is, name]: LayoutPin): Pin {
  if (is === 'no pin') return { pin: label, missing: true, name, source, confidence: 0.9 };
  return { pin: label, signal: signalAt(is), ...portAt(is), name, source, confidence: 0.9 };
}

function signalAt(is: Exclude<At, 'no pin'>): SignalId {
  const [signal] = is.split('@');
  // A signal's name has no @ in it, so that what stands before one is a signal.
  return signal as SignalId;
}

export function portAt(is: At): { readonly channel?: string } {
  const [, channel] = is.split('@');
  return channel === undefined ? {} : { channel };
}
