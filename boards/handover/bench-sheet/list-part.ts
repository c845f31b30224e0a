import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Measure } from '../../drawing/measure';
import { FROM_TO_COLUMNS, type FromTo, fromToOf } from '../from-to';
import type { Piece } from '../page/flow';
import { goingOn, tableOf } from '../page/table';
import { TYPES } from '../page/type';
import { paragraph } from '../pinout/connector-section';
import { NO_PLUGS, PART_TITLES } from './bench-words';
import { partHeading } from './part-heading';

/** How the columns share the width. */
const SHARES: Readonly<Record<keyof FromTo, number>> = {
  lead: 0.14,
  from: 0.15,
  colour: 0.11,
  plug: 0.12,
  hole: 0.06,
  connector: 0.13,
  pin: 0.06,
  signal: 0.13,
  name: 0.1,
};

/** The from-to list as a table over as many pages as it takes. */
export function listPart(build: Build, widthMm: Mm, measure: Measure): readonly Piece[] {
  const columns = FROM_TO_COLUMNS.map(([column, title]) => ({
    title,
    widthMm: widthMm * SHARES[column],
    type: column === 'pin' ? TYPES.pin : column === 'colour' ? TYPES.strong : TYPES.cell,
  }));
  const rows = fromToOf(build).map((row) => FROM_TO_COLUMNS.map(([column]) => row[column]));
  const goesOn = goingOn(`${PART_TITLES.list}, continued`, widthMm, measure);
  return [
    ...partHeading('list', widthMm, measure),
    ...(rows.length === 0
      ? paragraph(NO_PLUGS, TYPES.body, widthMm, measure)
      : tableOf(columns, rows, { leftMm: 0, goesOn }, measure)),
  ];
}
