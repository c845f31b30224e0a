import type { Mm } from '../../base/units';

/** Millimetres of paper for one of the drawing's own, whose names are 0.5 high: names of 8.5 points. */
export const DRAWING_SCALE = 6;

/** A width of the pen, given as it comes out on the paper, in the drawing's own millimetres. */
export function pen(paperMm: Mm): Mm {
  return paperMm / DRAWING_SCALE;
}
