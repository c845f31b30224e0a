import type { Cell, Corner, Grid, Numbering } from './grid';

type Scheme = Exclude<Numbering['scheme'], 'free'>;

/**
 * The place in the count (from 0) of a cell that has been mirrored so that counting begins top left.
 * Zig-zag and U-shaped run along the longer side; the other two say their direction themselves.
 */
function orderOf(scheme: Scheme, row: number, col: number, rows: number, cols: number): number {
  const wide = cols >= rows;
  switch (scheme) {
    case 'by-row':
      return row * cols + col;
    case 'by-column':
      return col * rows + row;
    case 'zig-zag':
      return wide ? col * rows + row : row * cols + col;
    case 'u-shaped':
      return wide
        ? row * cols + (row % 2 === 0 ? col : cols - 1 - col)
        : col * rows + (col % 2 === 0 ? row : rows - 1 - row);
  }
}

function fromTopLeft(corner: Corner, row: number, col: number, grid: Grid): Cell {
  return [
    corner === 'top-left' || corner === 'top-right' ? row : grid.rows - 1 - row,
    corner === 'top-left' || corner === 'bottom-left' ? col : grid.cols - 1 - col,
  ];
}

/** The label of every position, row by row; null where the grid has none. */
function labelRows(grid: Grid): readonly (readonly (string | null)[])[] {
  const { numbering, rows, cols } = grid;
  if (numbering.scheme === 'free') return numbering.labels;
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: cols }, (__, col) => {
      const [r, c] = fromTopLeft(numbering.from, row, col, grid);
      return String(orderOf(numbering.scheme, r, c, rows, cols) + 1);
    }),
  );
}

/** Both directions of a grid's numbering, worked out once for each grid object. */
export interface GridIndex {
  /** Label of a cell; undefined outside the grid or where it has no position. */
  readonly labelAt: (cell: Cell) => string | undefined;
  /** Cell of a label; undefined when no position has it. */
  readonly cellOf: (label: string) => Cell | undefined;
  /** Every position in counting order for numbered schemes, row by row for free ones. */
  readonly positions: readonly { readonly label: string; readonly cell: Cell }[];
}

const indexes = new WeakMap<Grid, GridIndex>();

/** The index of a grid. Grids are immutable, so it is kept as long as the grid is. */
export function gridIndex(grid: Grid): GridIndex {
  const known = indexes.get(grid);
  if (known) return known;
  const labels = labelRows(grid);
  const cells = new Map<string, Cell>();
  const positions: { label: string; cell: Cell }[] = [];
  labels.forEach((row, r) => {
    row.forEach((label, c) => {
      if (label === null || cells.has(label)) return;
      cells.set(label, [r, c]);
      positions.push({ label, cell: [r, c] });
    });
  });
  if (grid.numbering.scheme !== 'free') positions.sort((a, b) => Number(a.label) - Number(b.label));
  const index: GridIndex = {
    labelAt: ([row, col]) => labels[row]?.[col] ?? undefined,
    cellOf: (label) => cells.get(label),
    positions,
  };
  indexes.set(grid, index);
  return index;
}
