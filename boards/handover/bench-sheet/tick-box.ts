import type { Mm } from '../../base/units';
import type { Point } from '../../drawing/geometry';
import type { Drawn } from '../page/page';

/** Wide enough for a tick with a gloved hand and a thick pencil. */
export const TICK_MM: Mm = 4.2;

/** An empty box to be ticked; the point is its top left corner. */
export function tickBox({ x, y }: Point): Drawn {
  const box = { x, y, width: TICK_MM, height: TICK_MM };
  return { kind: 'rect', box, paint: { fill: 'paper', stroke: { ink: 'ink', widthMm: 0.35 } } };
}
