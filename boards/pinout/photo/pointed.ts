import type { Cell, Grid } from '../../document/grid';
import { rowPitchOf } from '../../document/grid';
import { gridIndex } from '../../document/numbering';
import type { PlanePoint } from './matrix3';

/** A pin, and where in the picture somebody pointed at it. */
export interface PinPoint {
  readonly pin: string;
  readonly xPx: number;
  readonly yPx: number;
}

/** The size of a picture. */
export interface PictureSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The middle of a cell in the connector's own plane: millimetres from the middle of its first cell. */
export function cellPlace(grid: Grid, [row, col]: Cell): PlanePoint {
  return { x: col * grid.pitchMm, y: row * rowPitchOf(grid) };
}

/** Whether every position stands in one line, so that no quadrangle can be pointed at. */
export function isOneRow({ rows, cols }: Grid): boolean {
  return rows === 1 || cols === 1;
}

/** How many pins have to be pointed at: four, or three where there is only one row. */
export function pointsNeeded(grid: Grid): number {
  return isOneRow(grid) ? 3 : 4;
}

/**
 * The pins to point at first, in this order: the corners of the grid, then the middles of its longer sides,
 * then what lies between. Pins far from each other hold the grid best; four of each row tell which one is off.
 */
export function pinsToPointAt(grid: Grid, missing: ReadonlySet<string> = new Set()): readonly string[] {
  const { labelAt, positions } = gridIndex(grid);
  const standing = positions.filter(({ label }) => !missing.has(label));
  const wanted = wantedCells(grid);
  const order: string[] = [];
  for (const cell of wanted) {
    const label = labelAt(cell);
    if (label !== undefined && !missing.has(label) && !order.includes(label)) order.push(label);
    else {
      const near = nearest(standing, cell, order);
      if (near !== undefined) order.push(near);
    }
  }
  return [...order, ...standing.map(({ label }) => label).filter((label) => !order.includes(label))];
}

function wantedCells({ rows, cols }: Grid): readonly Cell[] {
  const [bottom, right] = [rows - 1, cols - 1];
  const corners: readonly Cell[] = [
    [0, 0],
    [0, right],
    [bottom, right],
    [bottom, 0],
  ];
  const wide = cols >= rows;
  const long = wide ? right : bottom;
  const between = [Math.round(long / 2), Math.round(long / 4), Math.round((3 * long) / 4)];
  const cells = [
    ...corners,
    ...between.flatMap((at): readonly Cell[] =>
      wide
        ? [
            [0, at],
            [bottom, at],
          ]
        : [
            [at, 0],
            [at, right],
          ],
    ),
  ];
  return cells.filter(([row, col], place) => cells.findIndex(([r, c]) => r === row && c === col) === place);
}

/** The pin next to a cell where none stands, of those that are not asked for already. */
function nearest(
  standing: readonly { readonly label: string; readonly cell: Cell }[],
  [row, col]: Cell,
  taken: readonly string[],
): string | undefined {
  const away = ({ cell }: { readonly cell: Cell }) => Math.hypot(cell[0] - row, cell[1] - col);
  return standing.filter((each) => !taken.includes(each.label)).toSorted((a, b) => away(a) - away(b))[0]
    ?.label;
}
