import type { Connector } from '../document/connector';
import type { Grid } from '../document/grid';
import { FAMILY } from './families';

/**
 * Open posts of which nothing is known yet but how they stand and are counted. Where nothing is printed beside
 * them, the title is what they are called.
 */
export function blankHeader(
  grid: Grid,
  onBoard: Pick<Connector, 'id' | 'print' | 'place'> & Partial<Pick<Connector, 'title'>>,
): Connector {
  return { title: 'open posts', ...onBoard, family: FAMILY.pinHeader, grid, pins: [] };
}

/** "header 1", "header 2": what a header is called that has no print, after those that there are. */
export function headerTitle(connectors: readonly Pick<Connector, 'print' | 'title'>[]): string {
  const taken = new Set(connectors.map(({ print, title }) => print || title));
  let number = 1;
  while (taken.has(`header ${number}`)) number++;
  return `header ${number}`;
}
