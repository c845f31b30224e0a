import type { SignalId } from '../../../boards/signals/signals';

/** What a person would write beside a pin, and the signal that it is. */
export const MEANINGS: Readonly<Record<string, SignalId>> = {
  'drive LED +': 'drive-led-feed',
  'drive LED −': 'drive-led-sink',
  'power LED +': 'power-led-feed',
  'power LED −': 'power-led-sink',
  'power button': 'power-switch-input',
  'reset button': 'reset-switch-input',
  ground: 'ground',
  '+5 V': 'supply-5v',
  'keep free': 'reserved',
  open: 'no-connection',
  'speaker +5 V': 'speaker-feed',
  speaker: 'speaker-drive',
  'mic left': 'hd-mic-left',
  'mic right': 'hd-mic-right',
  'phones left': 'hd-phones-left',
  'phones right': 'hd-phones-right',
  'panel present': 'hd-presence',
  'sense out': 'hd-sense-send',
  'mic sense': 'hd-sense1-return',
  'phones sense': 'hd-sense2-return',
  mic: 'ac97-mic',
  'mic bias': 'ac97-mic-bias',
  'out right': 'ac97-out-right',
  'out left': 'ac97-out-left',
  'USB +5 V': 'usb-vbus',
  'USB D−': 'usb-d-minus',
  'USB D+': 'usb-d-plus',
  'USB 3 +5 V': 'usb3-vbus',
  'receive −': 'usb3-ssrx-minus',
  'receive +': 'usb3-ssrx-plus',
  'send −': 'usb3-sstx-minus',
  'send +': 'usb3-sstx-plus',
  'D−': 'usb3-d-minus',
  'D+': 'usb3-d-plus',
  'lid contact': 'case-open-input',
  'fan +12 V': 'fan-supply',
  'fan speed': 'fan-tach',
  'fan control': 'fan-pwm',
};

export interface Layout {
  readonly what: string;
  readonly pitchMm: number;
  readonly count: 'odd and even' | 'along' | 'there and back';
  /** Number and meaning of every position; the row of pin 1 first, each from the side of pin 1 to the other. */
  readonly rows: readonly string[];
  /** The library's entry with the same signals on the same pins. */
  readonly sameAs: string;
}

/** Headers as manuals and build notes of real machines show them, restated. Pitches of 2.54 mm from memory. */
export const LAYOUTS: readonly Layout[] = [
  {
    what: 'a panel with +5 V beside the key',
    pitchMm: 2.54,
    count: 'odd and even',
    rows: [
      '1 drive LED +, 3 drive LED −, 5 ground, 7 reset button, 9 +5 V',
      '2 power LED +, 4 power LED −, 6 power button, 8 ground, 10 no pin',
    ],
    sameAs: 'panel-2x5-supply',
  },
  {
    what: 'a panel with a pin to be kept free beside the key',
    pitchMm: 2.54,
    count: 'odd and even',
    rows: [
      '1 drive LED +, 3 drive LED −, 5 ground, 7 reset button, 9 keep free',
      '2 power LED +, 4 power LED −, 6 power button, 8 ground, 10 no pin',
    ],
    sameAs: 'panel-2x5',
  },
  {
    what: 'a power LED three wide with a gap',
    pitchMm: 2.54,
    count: 'along',
    rows: ['1 power LED +, 2 no pin, 3 power LED −'],
    sameAs: 'power-led-1x3',
  },
  {
    what: 'a speaker four wide',
    pitchMm: 2.54,
    count: 'along',
    rows: ['1 speaker +5 V, 2 open, 3 open, 4 speaker'],
    sameAs: 'speaker-1x4',
  },
  {
    what: 'front audio with jack detection',
    pitchMm: 2.54,
    count: 'odd and even',
    rows: [
      '1 mic left, 3 mic right, 5 phones right, 7 sense out, 9 phones left',
      '2 ground, 4 panel present, 6 mic sense, 8 no pin, 10 phones sense',
    ],
    sameAs: 'hd-audio-2x5',
  },
  {
    what: 'the older front audio on a header made for both',
    pitchMm: 2.54,
    count: 'odd and even',
    rows: [
      '1 mic, 3 mic bias, 5 out right, 7 open, 9 out left',
      '2 ground, 4 panel present, 6 ground, 8 no pin, 10 ground',
    ],
    sameAs: 'ac97-audio-2x5-dual-mode',
  },
  {
    what: 'two USB 2.0 ports',
    pitchMm: 2.54,
    count: 'odd and even',
    rows: [
      '1 USB +5 V, 3 USB D−, 5 USB D+, 7 ground, 9 no pin',
      '2 USB +5 V, 4 USB D−, 6 USB D+, 8 ground, 10 open',
    ],
    sameAs: 'usb2-2x5',
  },
  {
    what: 'two USB 3 ports, counted there and back',
    pitchMm: 2,
    count: 'there and back',
    rows: [
      '1 USB 3 +5 V, 2 receive −, 3 receive +, 4 ground, 5 send −, 6 send +, 7 ground, 8 D−, 9 D+, 10 open',
      '20 no pin, 19 USB 3 +5 V, 18 receive −, 17 receive +, 16 ground, 15 send −, 14 send +, 13 ground, 12 D−, 11 D+',
    ],
    sameAs: 'usb3-19',
  },
  {
    what: 'a lid contact two wide',
    pitchMm: 2.54,
    count: 'along',
    rows: ['1 lid contact, 2 ground'],
    sameAs: 'case-open-1x2',
  },
  {
    what: 'a fan with three pins',
    pitchMm: 2.54,
    count: 'along',
    rows: ['1 ground, 2 fan +12 V, 3 fan speed'],
    sameAs: 'fan-1x3',
  },
  {
    what: 'a fan with four pins',
    pitchMm: 2.54,
    count: 'along',
    rows: ['1 ground, 2 fan +12 V, 3 fan speed, 4 fan control'],
    sameAs: 'fan-1x4',
  },
];
