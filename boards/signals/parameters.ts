import type { Parameter } from './parameter';

const RAILS = 'microATX specification v1.2, Table 7';
const GUIDE = 'Front Panel I/O Connectivity Design Guide v1.3 (2005)';
const USB = 'Universal Serial Bus 2.0, 7.1.5 and 7.2';
const HD = 'HD Audio specification, as drawn in codec data sheets';
const FAN = '4-Wire PWM Controlled Fans Specification rev 1.3, 2.1';
const LED = 'indicator LED data, reference page';
const LEDS = `${LED} and a supplier table`;
const NONE = 'common practice, no source';

type Row = readonly [
  id: string,
  name: string,
  unit: Parameter['unit'],
  range: readonly [low: number, usual: number, high: number],
  strong: Parameter['strong'],
  source: string,
  confidence: Parameter['confidence'],
];

const ROWS = [
  ['main-5v', '+5 V', 'V', [4.75, 5, 5.25], 'high', RAILS, 'read'],
  ['standby-5v', '+5 V standby', 'V', [4.75, 5, 5.25], 'high', RAILS, 'read'],
  ['main-12v', '+12 V', 'V', [11.4, 12, 12.6], 'high', RAILS, 'read'],
  ['main-3v3', '+3.3 V', 'V', [3.14, 3.3, 3.47], 'high', RAILS, 'read'],
  ['main-minus-12v', '−12 V', 'V', [-13.2, -12, -10.8], 'low', RAILS, 'read'],
  ['main-minus-5v', '−5 V', 'V', [-5.5, -5, -4.5], 'low', NONE, 'from memory'],
  [
    'logic-volts',
    'level that switch inputs are pulled to',
    'V',
    [3, 3.3, 5.25],
    'high',
    NONE,
    'common practice',
  ],
  ['cell-volts', 'coin cell', 'V', [2.5, 3, 3.3], 'high', NONE, 'common practice'],
  ['audio-volts', 'analogue audio rail', 'V', [3.14, 3.3, 5.25], 'high', HD, 'read in secondary'],
  ['rail-ohms', 'inner resistance of a rail', 'ohm', [0.01, 0.03, 0.1], 'low', NONE, 'common practice'],
  ['rail-off-ohms', 'load on a rail that is off', 'ohm', [10, 47, 1000], 'low', NONE, 'common practice'],
  [
    'inlet-ohms',
    'what a device takes at one supply pin, as a load',
    'ohm',
    [10, 47, 1000],
    'low',
    NONE,
    'common practice',
  ],
  ['ground-ohms', 'a ground pin to the plane', 'ohm', [0.002, 0.01, 0.03], 'low', NONE, 'common practice'],

  [
    'led-feed-ohms',
    'resistor in the LED feed',
    'ohm',
    [150, 330, 1000],
    'low',
    `${GUIDE}, 2.2.5`,
    'from memory',
  ],
  ['led-sink-ohms', 'output that pulls an LED down', 'ohm', [1, 20, 100], 'low', NONE, 'common practice'],
  [
    'switch-pull-ohms',
    'pull-up of a switch input',
    'ohm',
    [1000, 10_000, 100_000],
    'low',
    `${GUIDE}, 2.2.5`,
    'from memory',
  ],
  [
    'speaker-drive-ohms',
    'transistor and resistor in the speaker line',
    'ohm',
    [20, 47, 100],
    'low',
    NONE,
    'common practice',
  ],
  [
    'speaker-feed-ohms',
    'resistor in the speaker feed',
    'ohm',
    [0.05, 0.1, 75],
    'low',
    NONE,
    'common practice',
  ],
  [
    'cell-pull-ohms',
    'pull-up of an input fed by the cell',
    'ohm',
    [330_000, 1_000_000, 2_000_000],
    'low',
    NONE,
    'common practice',
  ],
  [
    'over-current-pull-ohms',
    'pull-up of an over-current input',
    'ohm',
    [4700, 10_000, 100_000],
    'low',
    NONE,
    'common practice',
  ],

  ['usb-fuse-ohms', 'resettable fuse when cold', 'ohm', [0.03, 0.1, 0.25], 'low', NONE, 'common practice'],
  [
    'usb-fuse-trip-amps',
    'current that trips the fuse of a USB supply',
    'A',
    [1.1, 2.2, 5],
    'high',
    USB,
    'from memory',
  ],
  [
    'usb-fuse-tripped-ohms',
    'resettable fuse when tripped',
    'ohm',
    [100, 500, 5000],
    'low',
    NONE,
    'common practice',
  ],
  [
    'usb-pull-down-ohms',
    'host pull-down on D+ and D−',
    'ohm',
    [14_250, 15_000, 15_750],
    'low',
    USB,
    'from memory',
  ],
  ['usb-line-ohms', 'termination of a fast pair', 'ohm', [40, 45, 50], 'low', USB, 'from memory'],
  ['usb-device-ohms', 'load of a USB device', 'ohm', [10.5, 50, 1000], 'low', USB, 'read in secondary'],
  [
    'usb-device-pull-ohms',
    'device pull-up on a data line',
    'ohm',
    [1425, 1500, 1575],
    'low',
    USB,
    'from memory',
  ],

  [
    'presence-pull-ohms',
    'pull-up of the presence pin',
    'ohm',
    [9500, 10_000, 10_500],
    'low',
    `${GUIDE}, 2.3.5.1.1`,
    'read',
  ],
  [
    'presence-panel-ohms',
    'presence resistor of the panel',
    'ohm',
    [950, 1000, 1050],
    'low',
    `${GUIDE}, 2.3.5.2`,
    'read',
  ],
  ['sense-pull-ohms', 'pull-up of the sense line', 'ohm', [2643, 2670, 2697], 'low', HD, 'read in secondary'],
  // Four resistors, 1 %, for the jacks of a line. Which jack has which depends on the codec's port;
  // that the panel has the two largest is common practice, no source.
  [
    'sense1-ohms',
    'jack resistor of the microphone',
    'ohm',
    [19_800, 20_000, 20_200],
    'low',
    HD,
    'read in secondary',
  ],
  [
    'sense2-ohms',
    'jack resistor of the phones',
    'ohm',
    [38_808, 39_200, 39_592],
    'low',
    HD,
    'read in secondary',
  ],
  [
    'sense3-ohms',
    'third jack resistor of the sense line',
    'ohm',
    [9900, 10_000, 10_100],
    'low',
    HD,
    'read in secondary',
  ],
  [
    'sense4-ohms',
    'fourth jack resistor of the sense line',
    'ohm',
    [5049, 5100, 5151],
    'low',
    HD,
    'read in secondary',
  ],
  ['audio-line-ohms', 'an audio output or input', 'ohm', [75, 1000, 47_000], 'low', NONE, 'common practice'],
  ['mic-bias-ohms', 'microphone bias', 'ohm', [2200, 3300, 4700], 'low', NONE, 'common practice'],

  ['tach-pull-ohms', 'pull-up of the tach line', 'ohm', [2200, 10_000, 47_000], 'low', FAN, 'from memory'],
  ['pwm-ohms', 'PWM output when low', 'ohm', [20, 100, 160], 'low', FAN, 'read'],
  ['fan-ohms', 'a fan as a load', 'ohm', [8.4, 60, 240], 'low', FAN, 'read'],
  ['fan-pull-ohms', 'pull-up to 5 V inside the fan', 'ohm', [1050, 4700, 10_000], 'low', FAN, 'read'],

  [
    'ps-on-pull-ohms',
    'pull-up of PS_ON# in the supply',
    'ohm',
    [3030, 10_000, 100_000],
    'low',
    'ATX 3.0 multi-rail design guide (336521), Table 4-11',
    'read',
  ],

  ['serial-volts', 'level of a serial output', 'V', [5, 9, 15], 'high', 'TIA-232', 'from memory'],
  ['serial-out-ohms', 'a serial output', 'ohm', [300, 300, 1000], 'low', 'TIA-232', 'from memory'],
  ['serial-in-ohms', 'a serial input', 'ohm', [3000, 5000, 7000], 'low', 'TIA-232', 'from memory'],
  [
    'ieee1394-line-ohms',
    'termination of a 1394 pair',
    'ohm',
    [50, 55, 60],
    'low',
    'IEEE 1394a',
    'from memory',
  ],

  [
    'wire-ohms',
    'a lead wire and its contacts',
    'ohm',
    [0.05, 0.12, 0.4],
    'low',
    'ASTM B258: 26 AWG, about 0.6 m',
    'read in secondary',
  ],
  ['switch-ohms', 'a switch contact when closed', 'ohm', [0.02, 0.1, 1], 'low', NONE, 'common practice'],
  ['speaker-ohms', 'voice coil of a case speaker', 'ohm', [7, 8, 50], 'low', NONE, 'common practice'],
  ['buzzer-ohms', 'a buzzer as a load', 'ohm', [100, 160, 1000], 'low', NONE, 'common practice'],
  [
    'sensor-ohms',
    'temperature sensor at room temperature',
    'ohm',
    [5000, 10_000, 100_000],
    'low',
    NONE,
    'common practice',
  ],
  [
    'power-led-volts',
    'forward voltage of a power LED at 10 mA',
    'V',
    [1.7, 2.1, 3.5],
    'low',
    LED,
    'read in secondary',
  ],
  [
    'drive-led-volts',
    'forward voltage of a drive LED at 10 mA',
    'V',
    [1.7, 1.9, 3.5],
    'low',
    LED,
    'read in secondary',
  ],
  ['red-led-volts', 'forward voltage of a red LED', 'V', [1.7, 1.9, 2.5], 'low', LEDS, 'read in secondary'],
  [
    'orange-led-volts',
    'forward voltage of an orange LED',
    'V',
    [2, 2.05, 2.1],
    'low',
    LED,
    'read in secondary',
  ],
  [
    'yellow-led-volts',
    'forward voltage of a yellow LED',
    'V',
    [2.1, 2.15, 2.5],
    'low',
    LEDS,
    'read in secondary',
  ],
  [
    'green-led-volts',
    'forward voltage of a green LED',
    'V',
    [2.1, 2.2, 3.5],
    'low',
    LEDS,
    'read in secondary',
  ],
  ['blue-led-volts', 'forward voltage of a blue LED', 'V', [3, 3.2, 3.3], 'low', LED, 'read in secondary'],
  ['white-led-volts', 'forward voltage of a white LED', 'V', [3, 3.2, 3.3], 'low', LED, 'read in secondary'],
] as const satisfies readonly Row[];

export type ParameterId = (typeof ROWS)[number][0];

const PARAMETERS: ReadonlyMap<ParameterId, Parameter> = new Map(
  ROWS.map(([id, name, unit, [low, usual, high], strong, source, confidence]) => [
    id,
    { id, name, unit, low, usual, high, strong, source, confidence },
  ]),
);

export const PARAMETER_IDS: readonly ParameterId[] = ROWS.map(([id]) => id);

/** Which end of a range is meant: the usual value, or the one that lets most or least current flow. */
export type RangeEnd = 'usual' | 'strong' | 'weak';

export function parameterOf(id: ParameterId): Parameter {
  const parameter = PARAMETERS.get(id);
  if (!parameter) throw new Error(`No parameter ${id}`);
  return parameter;
}

/** The value of a parameter at an end of its range, in its own unit. */
export function parameterAt(id: ParameterId, end: RangeEnd): number {
  const parameter = parameterOf(id);
  if (end === 'usual') return parameter.usual;
  const { strong } = parameter;
  return end === 'strong' ? parameter[strong] : parameter[strong === 'low' ? 'high' : 'low'];
}
