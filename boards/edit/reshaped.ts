import type { Connector, Shroud } from '../document/connector';
import type { Grid, Numbering } from '../document/grid';
import { gridIndex } from '../document/numbering';
import { onGrid } from './relabelled-pins';

export interface Shape extends Pick<Grid, 'rows' | 'cols' | 'pitchMm'> {
  readonly rowPitchMm: number | null;
  readonly family: string;
  readonly shroud: Shroud | null;
}

/** The connector in another shape, with what is known of the pins whose labels are still there. */
export function reshaped(connector: Connector, shape: Shape): Connector {
  const { rows, cols, pitchMm, rowPitchMm, family, shroud } = shape;
  const { shroud: _, ...rest } = connector;
  const grid: Grid = {
    rows,
    cols,
    pitchMm,
    ...(rowPitchMm !== null && { rowPitchMm }),
    numbering: cutTo(connector.grid.numbering, rows, cols),
  };
  return { ...onGrid(rest, grid, labelIn(grid)), family, ...(shroud && { shroud }) };
}

/** What a label becomes in a grid that has only some of them. */
export function labelIn(grid: Grid): (label: string) => string | undefined {
  const { cellOf } = gridIndex(grid);
  return (label) => (cellOf(label) === undefined ? undefined : label);
}

/** Free labels are cut to size; positions that come in are called by the lowest numbers that are free. */
function cutTo(numbering: Numbering, rows: number, cols: number): Numbering {
  if (numbering.scheme !== 'free') return numbering;
  const kept = numbering.labels.slice(0, rows).map((row) => row.slice(0, cols));
  const taken = new Set(kept.flat());
  let number = 0;
  const fresh = () => {
    do number += 1;
    while (taken.has(String(number)));
    return String(number);
  };
  const labels = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: cols }, (__, col) => {
      const label = kept[row]?.[col];
      return label === undefined ? fresh() : label;
    }),
  );
  return { scheme: 'free', labels };
}
