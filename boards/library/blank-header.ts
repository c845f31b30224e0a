import type { Connector } from '../document/connector';
import type { Grid } from '../document/grid';
import { FAMILY } from './families';

/** Open posts of which nothing is known yet but how they stand and are counted. */
export function blankHeader(grid: Grid, onBoard: Pick<Connector, 'id' | 'print' | 'place'>): Connector {
  const { rows, cols } = grid;
  const pins = rows * cols;
  const shape = rows === 1 || cols === 1 ? `${pins} in a row` : `${rows} rows of ${cols}`;
  const title = pins === 1 ? 'single post' : `open posts, ${shape}`;
  return { ...onBoard, title, family: FAMILY.pinHeader, grid, pins: [] };
}
