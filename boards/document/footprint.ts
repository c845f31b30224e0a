import type { Turn } from '../base/units';
import type { Seat } from './build';
import type { Grid } from './grid';

/** A rectangle of cells. */
export interface Footprint {
  readonly top: number;
  readonly left: number;
  readonly rows: number;
  readonly cols: number;
}

/** The cells a turned plug covers, when its first cell lies at 0, 0. */
export function footprintOf({ rows, cols }: Grid, turn: Turn): Footprint {
  switch (turn) {
    case 0:
      return { top: 0, left: 0, rows, cols };
    case 90:
      return { top: 0, left: 1 - rows, rows: cols, cols: rows };
    case 180:
      return { top: 1 - rows, left: 1 - cols, rows, cols };
    case 270:
      return { top: 1 - cols, left: 0, rows: cols, cols: rows };
  }
}

/** Whether a plug seated there lies over any cell of the connector's grid at all. */
export function liesOver(plug: Grid, seat: Pick<Seat, 'at' | 'turn'>, connector: Grid): boolean {
  const { top, left, rows, cols } = footprintOf(plug, seat.turn);
  const [row, col] = [seat.at[0] + top, seat.at[1] + left];
  return row < connector.rows && col < connector.cols && row + rows > 0 && col + cols > 0;
}
