import type { Pin } from '../../document/connector';
import type { Cell } from '../../document/grid';
import { pinOf } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import type { Layout } from './known-layout';
import { cellIn, type Orientation } from './orientation';

/** How a layout lies over a connector. */
export interface Laying {
  readonly orientation: Orientation;
  /** The connector's cell on which the first cell of the turned layout lies. */
  readonly offset: Cell;
}

export interface LaidPin {
  /** In the connector's own rows and columns; may lie outside. */
  readonly cell: Cell;
  readonly pin: Pin;
}

/** The pins of a layout where they come to lie, in its own counting order. */
export function laidPins(layout: Layout, { orientation, offset }: Laying): readonly LaidPin[] {
  return gridIndex(layout.grid).positions.map(({ label, cell }) => {
    const [row, col] = cellIn(orientation, layout.grid, cell);
    return { cell: [row + offset[0], col + offset[1]], pin: pinOf(layout, label) };
  });
}
