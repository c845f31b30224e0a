import type { Cell } from '../../document/grid';
import type { Shape } from './orientation';

/** Less in common than this much of the larger one is no likeness. */
const LEAST_SHARED = 0.5;
/** What a score keeps when the two have hardly a place in common. */
const SHAPE_FLOOR = 0.5;

/**
 * Every way to lay one grid within the other without turning it, as the cell of "here" on which the first
 * cell of "there" lies. None where neither holds the other, or the larger is more than twice the smaller.
 */
export function offsetsOf(here: Shape, there: Shape): readonly Cell[] {
  if (sharedPart(here, there) < LEAST_SHARED) return [];
  const within = there.rows <= here.rows && there.cols <= here.cols;
  const around = there.rows >= here.rows && there.cols >= here.cols;
  if (!within && !around) return [];
  const offsets: Cell[] = [];
  for (let row = 0; row <= Math.abs(here.rows - there.rows); row++)
    for (let col = 0; col <= Math.abs(here.cols - there.cols); col++)
      offsets.push(within ? [row, col] : [0 - row, 0 - col]);
  return offsets;
}

/** What a score is multiplied by for the places that only one of the two has; 1 for the same shape. */
export function shapeFactor(here: Shape, there: Shape): number {
  return SHAPE_FLOOR + (1 - SHAPE_FLOOR) * sharedPart(here, there);
}

function sharedPart(here: Shape, there: Shape): number {
  const sizes = [here.rows * here.cols, there.rows * there.cols];
  return Math.min(...sizes) / Math.max(...sizes);
}
