import { openHeader } from '../connector-type';
import { singleRow } from '../grids';
import { otherwise, pinsFrom } from '../pin-rows';
import { readAbout, recalled } from '../reading';

const USUAL = recalled('manual', 'speaker header, order of most board manuals');
const OTHER = readAbout('manual', 'speaker header, as an encyclopaedia lists it');

const usual = pinsFrom(USUAL);
const other = pinsFrom(OTHER);

/** No standard fixes the order: both are met. A moving coil does not care, a buzzer does. */
export const SPEAKER_CONNECTORS = [
  openHeader('speaker-1x4', {
    title: 'speaker',
    grid: singleRow(4),
    pins: [
      usual(1, 'speaker-feed', '+5 V', { alternatives: [otherwise('speaker-drive', OTHER.source)] }),
      usual(2, 'no-connection', 'NC', { belongsTo: 'speaker' }),
      usual(3, 'no-connection', 'NC', {
        belongsTo: 'speaker',
        alternatives: [otherwise('ground', OTHER.source)],
      }),
      usual(4, 'speaker-drive', 'SPK', { alternatives: [otherwise('speaker-feed', OTHER.source)] }),
    ],
  }),
  openHeader('speaker-1x4-reversed', {
    title: 'speaker, +5 V on pin 4',
    grid: singleRow(4),
    pins: [
      other(1, 'speaker-drive', 'SPK−', { alternatives: [otherwise('speaker-feed', USUAL.source)] }),
      other(2, 'no-connection', 'NC', { belongsTo: 'speaker' }),
      other(3, 'ground', 'GND', {
        belongsTo: 'speaker',
        alternatives: [otherwise('no-connection', USUAL.source)],
      }),
      other(4, 'speaker-feed', '+5 V', { alternatives: [otherwise('speaker-drive', USUAL.source)] }),
    ],
  }),
];
