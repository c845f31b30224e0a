import { connectorType } from '../connector-type';
import { FAMILY } from '../families';
import { HALF_PITCH, PERIPHERAL_PITCH, singleRow } from '../grids';
import { otherwise, pinsAlike, pinsFrom } from '../pin-rows';
import { readAbout, recalled } from '../reading';
import { box } from '../shrouds';

const SATA_DATA = readAbout('standard', 'Serial ATA 1.0a data segment, from a hardware handbook, Table 13-8');
const SATA_POWER = readAbout(
  'standard',
  'Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7',
);
const POWER_DISABLE = readAbout('standard', 'Serial ATA 3.3 power disable, from an encyclopaedia');
const PERIPHERAL = recalled('standard', 'peripheral power connector with four pins');
const L_KEY = 'side of the L in the shell (from memory)';

const data = pinsFrom(SATA_DATA);
const power = pinsFrom(SATA_POWER);
const peripheral = pinsFrom(PERIPHERAL);

const DATA = { belongsTo: 'sata-data' } as const;
const POWER = { belongsTo: 'drive-power' } as const;

export const DRIVE_CONNECTORS = [
  connectorType(
    'sata-data-7',
    {
      title: 'SATA data',
      family: FAMILY.sataData,
      grid: singleRow(7, HALF_PITCH),
      pins: [
        data(1, 'ground', 'GND', DATA),
        data(2, 'sata-a-plus', 'A+'),
        data(3, 'sata-a-minus', 'A−'),
        data(4, 'ground', 'GND', DATA),
        data(5, 'sata-b-minus', 'B−'),
        data(6, 'sata-b-plus', 'B+'),
        data(7, 'ground', 'GND', DATA),
      ],
      shroud: box('top'),
    },
    [L_KEY],
  ),
  connectorType(
    'sata-power-15',
    {
      title: 'SATA power',
      family: FAMILY.sataPower,
      grid: singleRow(15, HALF_PITCH),
      pins: [
        ...pinsAlike(power, [1, 2], 'supply-3v3', '+3.3 V', POWER),
        power(3, 'supply-3v3', '+3.3 V', {
          ...POWER,
          alternatives: [otherwise('drive-power-disable', POWER_DISABLE.source)],
          notes: 'Newer drives stay off while +3.3 V is here.',
        }),
        ...pinsAlike(power, [4, 5, 6, 10, 12], 'ground', 'GND', POWER),
        ...pinsAlike(power, [7, 8, 9], 'supply-5v', '+5 V', POWER),
        power(11, 'drive-spin-up', 'reserved', {
          notes: 'Spin-up when grounded by the cable; activity on some.',
        }),
        ...pinsAlike(power, [13, 14, 15], 'supply-12v', '+12 V', POWER),
      ],
      shroud: box('top'),
    },
    [L_KEY],
  ),
  connectorType('peripheral-power-1x4', {
    title: 'peripheral power',
    family: FAMILY.peripheralPower,
    grid: singleRow(4, PERIPHERAL_PITCH),
    pins: [
      peripheral(1, 'supply-12v', '+12 V', POWER),
      ...pinsAlike(peripheral, [2, 3], 'ground', 'COM', POWER),
      peripheral(4, 'supply-5v', '+5 V', POWER),
    ],
    shroud: box('top'),
    notes: 'The slanted corners are shallow: a plug can be forced in the wrong way round.',
  }),
];
