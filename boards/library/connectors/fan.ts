import { openHeader } from '../connector-type';
import { singleRow } from '../grids';
import { pinsFrom } from '../pin-rows';
import { readAbout, recalled } from '../reading';
import { ramp } from '../shrouds';

const FOUR_WIRE = readAbout(
  'standard',
  '4-Wire PWM Controlled Fans Specification rev 1.3 (2005), Table 1, as quoted by owners and board manuals',
);
const THREE_WIRE = recalled('manual', 'three-pin fan header');
const PITCH = 'pitch 2.54 mm (from memory)';
const RAMP = 'side of the ramp (from memory)';

const four = pinsFrom(FOUR_WIRE);
const three = pinsFrom(THREE_WIRE);
const GROUND = { belongsTo: 'fan' } as const;

/** The ramp turns a plug the right way round; it does not keep one from sitting a pin too far. */
export const FAN_CONNECTORS = [
  openHeader(
    'fan-1x3',
    {
      title: 'fan, three pins',
      grid: singleRow(3),
      pins: [
        three(1, 'ground', 'GND', GROUND),
        three(2, 'fan-supply', '+12 V'),
        three(3, 'fan-tach', 'TACH'),
      ],
      shroud: ramp('bottom'),
    },
    [PITCH, RAMP],
  ),
  openHeader(
    'fan-1x4',
    {
      title: 'fan, four pins',
      grid: singleRow(4),
      pins: [
        four(1, 'ground', 'GND', GROUND),
        four(2, 'fan-supply', '+12 V'),
        four(3, 'fan-tach', 'SENSE'),
        four(4, 'fan-pwm', 'CONTROL'),
      ],
      shroud: ramp('bottom'),
    },
    [PITCH, RAMP],
  ),
];
