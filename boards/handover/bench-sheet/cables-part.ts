import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Measure } from '../../drawing/measure';
import { CABLE_COLUMNS, type CableRow, cableRows } from '../cables/cable-list';
import type { Piece } from '../page/flow';
import { goingOn, tableOf } from '../page/table';
import { TYPES } from '../page/type';
import { paragraph } from '../pinout/connector-section';
import { NO_CABLES, PART_TITLES } from './bench-words';
import { partHeading } from './part-heading';

/** How the columns share the width. */
const SHARES: Readonly<Record<keyof CableRow, number>> = {
  cable: 0.13,
  from: 0.12,
  to: 0.12,
  thickness: 0.06,
  length: 0.06,
  way: 0.14,
  wayLength: 0.06,
  inSight: 0.07,
  state: 0.12,
  when: 0.12,
};

/** Every cable with its ends, its lengths and its way, in the order in which they are laid. */
export function cablesPart(build: Build, widthMm: Mm, measure: Measure): readonly Piece[] {
  const columns = CABLE_COLUMNS.map(([column, title]) => ({
    title,
    widthMm: widthMm * SHARES[column],
    type: column === 'cable' ? TYPES.strong : TYPES.cell,
  }));
  const rows = cableRows(build).map((row) => CABLE_COLUMNS.map(([column]) => row[column]));
  const goesOn = goingOn(`${PART_TITLES.cables}, continued`, widthMm, measure);
  return [
    ...partHeading('cables', widthMm, measure),
    ...(rows.length === 0
      ? paragraph(NO_CABLES, TYPES.body, widthMm, measure)
      : tableOf(columns, rows, { leftMm: 0, goesOn }, measure)),
  ];
}
