import { connectorType } from '../connector-type';
import { FAMILY } from '../families';
import { rowAfterRow } from '../grids';
import { otherwise, pinsAlike, pinsFrom } from '../pin-rows';
import { readAbout, readIn, recalled } from '../reading';
import { box } from '../shrouds';

const MICRO_ATX = readIn('standard', 'microATX specification v1.2 (2004), Figure 8');
const ATX_2_01 = readAbout('standard', 'ATX specification 2.01, from a copy on the web');
const FOUR_PIN = readIn('standard', 'ATX 3.0 power supply design guide (336521), Table 5-8');
const CPU_8 = readAbout('standard', '12 V CPU connector with eight pins, from a pinout page');
const CARD_6 = readIn('standard', 'ATX 3.0 power supply design guide (336521), Table 5-4');
const CARD_8 = readIn('standard', 'ATX 3.0 power supply design guide (336521), Table 5-5');
const OLD_MINUS_5 = recalled('standard', 'older supplies: −5 V on pin 20');
const LATCH = 'side of the latch (from memory)';
const PITCH = 'pitch 4.2 mm (from memory)';

const main24 = pinsFrom(MICRO_ATX);
const main20 = pinsFrom(ATX_2_01);
const cpu4 = pinsFrom(FOUR_PIN);
const cpu8 = pinsFrom(CPU_8);
const card6 = pinsFrom(CARD_6);
const card8 = pinsFrom(CARD_8);

const MAIN = { belongsTo: 'main-power' } as const;
const CPU = { belongsTo: 'cpu-power' } as const;
const CARD = { belongsTo: 'card-power' } as const;

/** The latch stands beside the second row. */
const BOX = box('bottom');

export const POWER_CONNECTORS = [
  connectorType(
    'main-power-24',
    {
      title: 'main power, 24 pins',
      family: FAMILY.mainPower,
      grid: rowAfterRow(12),
      pins: [
        ...pinsAlike(main24, [1, 2, 12, 13], 'supply-3v3', '+3.3 V', MAIN),
        ...pinsAlike(main24, [3, 5, 7, 15, 17, 18, 19, 24], 'ground', 'COM', MAIN),
        ...pinsAlike(main24, [4, 6, 21, 22, 23], 'supply-5v', '+5 V', MAIN),
        main24(8, 'power-ok', 'PWR_OK', { notes: 'The figure prints PWR_ON here, a slip.' }),
        main24(9, 'supply-5v-standby', '+5 VSB', MAIN),
        ...pinsAlike(main24, [10, 11], 'supply-12v', '+12 V', MAIN),
        main24(14, 'supply-minus-12v', '−12 V', MAIN),
        main24(16, 'ps-on', 'PS_ON#'),
        main24(20, 'no-connection', 'NC', {
          ...MAIN,
          alternatives: [otherwise('supply-minus-5v', OLD_MINUS_5.source)],
        }),
      ],
      shroud: BOX,
    },
    [PITCH, LATCH],
  ),
  connectorType(
    'main-power-20',
    {
      title: 'main power, 20 pins',
      family: FAMILY.mainPower,
      grid: rowAfterRow(10),
      pins: [
        ...pinsAlike(main20, [1, 2], 'supply-3v3', '+3.3 V', MAIN),
        main20(11, 'supply-3v3', '+3.3 V and sense', MAIN),
        ...pinsAlike(main20, [3, 5, 7, 13, 15, 16, 17], 'ground', 'COM', MAIN),
        ...pinsAlike(main20, [4, 6, 19, 20], 'supply-5v', '+5 V', MAIN),
        main20(8, 'power-ok', 'PWR_OK'),
        main20(9, 'supply-5v-standby', '+5 VSB', MAIN),
        main20(10, 'supply-12v', '+12 V', MAIN),
        main20(12, 'supply-minus-12v', '−12 V', MAIN),
        main20(14, 'ps-on', 'PS_ON#'),
        main20(18, 'supply-minus-5v', '−5 V', MAIN),
      ],
      shroud: BOX,
    },
    [PITCH, LATCH],
  ),
  connectorType(
    'cpu-power-2x2',
    {
      title: '12 V for the CPU, four pins',
      family: FAMILY.cpuPower,
      grid: rowAfterRow(2),
      pins: [
        ...pinsAlike(cpu4, [1, 2], 'ground', 'COM', CPU),
        ...pinsAlike(cpu4, [3, 4], 'supply-12v', '+12 V', CPU),
      ],
      shroud: BOX,
    },
    [PITCH, LATCH],
  ),
  connectorType(
    'cpu-power-2x4',
    {
      title: '12 V for the CPU, eight pins',
      family: FAMILY.cpuPower,
      grid: rowAfterRow(4),
      pins: [
        ...pinsAlike(cpu8, [1, 2, 3, 4], 'ground', 'COM', CPU),
        ...pinsAlike(cpu8, [5, 6, 7, 8], 'supply-12v', '+12 V', CPU),
      ],
      shroud: BOX,
    },
    [PITCH],
  ),
  connectorType(
    'card-power-2x3',
    {
      title: '12 V for a card, six pins',
      family: FAMILY.cardPower,
      grid: rowAfterRow(3),
      pins: [
        ...pinsAlike(card6, [1, 2, 3], 'supply-12v', '+12 V', CARD),
        ...pinsAlike(card6, [4, 6], 'ground', 'COM', CARD),
        card6(5, 'card-sense', 'Sense'),
      ],
      shroud: BOX,
    },
    [LATCH],
  ),
  connectorType(
    'card-power-2x4',
    {
      title: '12 V for a card, eight pins',
      family: FAMILY.cardPower,
      grid: rowAfterRow(4),
      pins: [
        ...pinsAlike(card8, [1, 2, 3], 'supply-12v', '+12 V', CARD),
        card8(4, 'card-sense1', 'Sense1'),
        ...pinsAlike(card8, [5, 7, 8], 'ground', 'COM', CARD),
        card8(6, 'card-sense0', 'Sense0'),
      ],
      shroud: BOX,
    },
    [LATCH],
  ),
];
