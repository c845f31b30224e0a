import { openHeader } from '../connector-type';
import { singleRow } from '../grids';
import { otherwise, pinsFrom } from '../pin-rows';
import { readIn, recalled } from '../reading';

const SIGNAL_FIRST = readIn('manual', 'a board product guide: chassis intrusion header, signal on pin 1');
const GROUND_FIRST = readIn(
  'manual',
  'another board product guide: chassis intrusion header, ground on pin 1',
);
const CLEAR = recalled('manual', 'clear-settings jumper: cap on 1-2 to keep, on 2-3 to clear');

const signalFirst = pinsFrom(SIGNAL_FIRST);
const groundFirst = pinsFrom(GROUND_FIRST);
const clear = pinsFrom(CLEAR);

/** Short rows that are bridged: by a switch in the lid, or by a cap. */
export const JUMPER_CONNECTORS = [
  openHeader('case-open-1x2', {
    title: 'case open',
    grid: singleRow(2),
    pins: [
      signalFirst(1, 'case-open-input', 'INTRUDER', {
        alternatives: [otherwise('ground', GROUND_FIRST.source)],
      }),
      signalFirst(2, 'ground', 'GND', {
        belongsTo: 'case-open',
        alternatives: [otherwise('case-open-input', GROUND_FIRST.source)],
      }),
    ],
  }),
  openHeader('case-open-1x2-ground-first', {
    title: 'case open, ground on pin 1',
    grid: singleRow(2),
    pins: [
      groundFirst(1, 'ground', 'GND', {
        belongsTo: 'case-open',
        alternatives: [otherwise('case-open-input', SIGNAL_FIRST.source)],
      }),
      groundFirst(2, 'case-open-input', 'INTRUDER#', {
        alternatives: [otherwise('ground', SIGNAL_FIRST.source)],
      }),
    ],
  }),
  openHeader('clear-settings-1x3', {
    title: 'clear settings',
    grid: singleRow(3),
    pins: [
      clear(1, 'no-connection', 'KEEP', { belongsTo: 'clear-settings' }),
      clear(2, 'clear-settings', 'CLEAR'),
      clear(3, 'ground', 'GND', { belongsTo: 'clear-settings' }),
    ],
    notes: 'The cap belongs on 1-2. On 2-3 the board forgets its settings and may not start.',
  }),
];
