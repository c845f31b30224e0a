import { TURNS, type Turn } from '../../base/units';
import type { Cell } from '../../document/grid';

/** One of the eight ways a layout can lie: first mirrored left to right, if at all, then turned clockwise. */
export interface Orientation {
  readonly turn: Turn;
  readonly mirrored: boolean;
}

/** All eight, the likeliest first: as drawn, turned by half, by quarters, then in mirror. */
export const ORIENTATIONS: readonly Orientation[] = [false, true].flatMap((mirrored) =>
  [...TURNS].sort((a, b) => (a % 180) - (b % 180) || a - b).map((turn) => ({ turn, mirrored })),
);

export interface Shape {
  readonly rows: number;
  readonly cols: number;
}

/** The shape that a grid has once it lies so. */
export function shapeIn({ turn }: Orientation, { rows, cols }: Shape): Shape {
  return turn % 180 === 0 ? { rows, cols } : { rows: cols, cols: rows };
}

/** Where a cell of a grid comes to lie. */
export function cellIn({ turn, mirrored }: Orientation, { rows, cols }: Shape, [row, col]: Cell): Cell {
  const along = mirrored ? cols - 1 - col : col;
  switch (turn) {
    case 0:
      return [row, along];
    case 90:
      return [along, rows - 1 - row];
    case 180:
      return [rows - 1 - row, cols - 1 - along];
    case 270:
      return [cols - 1 - along, row];
  }
}
