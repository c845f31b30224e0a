import type { Connector } from '../../document/connector';
import type { Cell } from '../../document/grid';
import { pinOf } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';

/** A pin that stands, as a person sees it on the board: where it is, and its label. */
export interface Post {
  readonly label: string;
  readonly cell: Cell;
}

/** Every pin that stands, in counting order. Which ones are missing a person sees, so the sheet is believed. */
export function postsOf(connector: Connector): readonly Post[] {
  return gridIndex(connector.grid).positions.filter(({ label }) => pinOf(connector, label).missing !== true);
}

/** A cell as a text, to look it up by. */
export function cellKey([row, col]: Cell): string {
  return `${row},${col}`;
}
