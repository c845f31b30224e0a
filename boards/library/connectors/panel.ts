import { openHeader } from '../connector-type';
import { singleRow, zigZag } from '../grids';
import { keyAt, otherwise, pinsFrom } from '../pin-rows';
import { readAbout, readIn, recalled } from '../reading';

const GUIDE = 'Front Panel I/O Connectivity Design Guide v1.3 (2005)';
const POLARITY = readAbout('standard', `${GUIDE}, 2.2.2; polarity from assembly notes and a board manual`);
const KEY = readIn('standard', `${GUIDE}, Figure 10`);
const OLD_PIN_9 = recalled('manual', 'older board manuals: +5 V on pin 9 of the panel');
const AUXILIARY = readIn('manual', 'two board technical product specifications: auxiliary power LED header');
const FIVE_WIDE = readAbout('manual', 'power LED and key lock header, from a tutorial on older boards');

const panel = pinsFrom(POLARITY);
const auxiliary = pinsFrom(AUXILIARY);
const fiveWide = pinsFrom(FIVE_WIDE);

/** The names are the guide's own as recalled: its table 2.2.5 could not be opened. */
const SWITCHES_AND_LEDS = [
  panel(1, 'drive-led-feed', 'HD_PWR'),
  panel(2, 'power-led-feed', 'FP PWR/SLP'),
  panel(3, 'drive-led-sink', 'HAD#'),
  panel(4, 'power-led-sink', 'FP PWR/SLP'),
  panel(5, 'ground', 'RST_SW−', { belongsTo: 'reset-switch' }),
  panel(6, 'power-switch-input', 'PWR_SW+'),
  panel(7, 'reset-switch-input', 'RST_SW+'),
  panel(8, 'ground', 'PWR_SW−', { belongsTo: 'power-switch' }),
];

export const PANEL_CONNECTORS = [
  openHeader('panel-2x5', {
    title: 'switches and LEDs',
    grid: zigZag(5),
    pins: [
      ...SWITCHES_AND_LEDS,
      panel(9, 'reserved', 'RSVD', { alternatives: [otherwise('supply-5v', OLD_PIN_9.source)] }),
      keyAt(10, KEY),
    ],
  }),
  openHeader('panel-2x5-supply', {
    title: 'switches and LEDs, +5 V on pin 9',
    grid: zigZag(5),
    pins: [...SWITCHES_AND_LEDS, pinsFrom(OLD_PIN_9)(9, 'supply-5v', '+5 V'), keyAt(10, KEY)],
    notes: 'A plug one column too far towards the key meets +5 V on pin 9.',
  }),
  openHeader('power-led-1x3', {
    title: 'power LED, three wide',
    grid: singleRow(3),
    pins: [
      auxiliary(1, 'power-led-feed', 'FP_LED+'),
      keyAt(2, AUXILIARY),
      auxiliary(3, 'power-led-sink', 'FP_LED−'),
    ],
    notes: 'The same two lines as pins 2 and 4 of the panel. A two-colour LED: green on 1, yellow on 3.',
  }),
  openHeader('power-led-key-lock-1x5', {
    title: 'power LED and key lock',
    grid: singleRow(5),
    pins: [
      fiveWide(1, 'power-led-feed', 'LED+'),
      fiveWide(2, 'no-connection', 'NC'),
      fiveWide(3, 'ground', 'LED ground', { belongsTo: 'power-led' }),
      fiveWide(4, 'key-lock-input', 'KEYLOCK'),
      fiveWide(5, 'ground', 'KEYLOCK ground', { belongsTo: 'key-lock' }),
    ],
  }),
];
