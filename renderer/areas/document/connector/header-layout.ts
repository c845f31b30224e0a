import type { Build } from '../../../../boards/document/build';
import type { Connector } from '../../../../boards/document/connector';
import type { Cell } from '../../../../boards/document/grid';
import { gridIndex } from '../../../../boards/document/numbering';
import { orientationOf } from '../../../../boards/drawing/orientation';
import { orientedGrid } from '../../../../boards/drawing/oriented-grid';

/** A row and a column as drawn, from 0 at the top left. */
export type Spot = readonly [row: number, col: number];

/** The positions of a connector as it lies before the person: rows and columns of the drawing. */
export interface HeaderLayout {
  readonly rows: number;
  readonly cols: number;
  /** Every place of the grid, also those without a position, row by row as drawn. */
  readonly spots: readonly (readonly Spot[])[];
  /** null: no position there, or outside. */
  readonly labelAt: (spot: Spot) => string | null;
  /** Row and column of the unturned grid. */
  readonly cellAt: (spot: Spot) => Cell;
  /** Throws for a label that the connector has not: labels come from here. */
  readonly spotOf: (label: string) => Spot;
  /** Every position, row by row as drawn. */
  readonly labels: readonly string[];
}

/** How a connector lies in the drawing of the board: its own turn and that of the view. */
export function layoutOf(connector: Connector, view: Build['view']): HeaderLayout {
  const { grid } = connector;
  const { rows, cols, place } = orientedGrid(connector, orientationOf(view));
  const cells = Array.from({ length: rows }, () => new Array<Cell>(cols));
  for (let r = 0; r < grid.rows; r++)
    for (let c = 0; c < grid.cols; c++) {
      const { row, col } = place([r, c]);
      cells[row]?.splice(col, 1, [r, c]);
    }
  const { labelAt, cellOf } = gridIndex(grid);
  const labelOn = ([row, col]: Spot) => {
    const cell = cells[row]?.[col];
    return (cell && labelAt(cell)) ?? null;
  };
  const spots = cells.map((line, row) => line.map((_, col): Spot => [row, col]));
  return {
    rows,
    cols,
    spots,
    labelAt: labelOn,
    cellAt: ([row, col]) => cells[row]?.[col] ?? [row, col],
    spotOf: (label) => {
      const cell = cellOf(label);
      if (cell === undefined) throw new Error(`No position ${label}`);
      const { row, col } = place(cell);
      return [row, col];
    },
    labels: spots.flat().flatMap((spot) => labelOn(spot) ?? []),
  };
}
