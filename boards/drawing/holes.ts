import type { Mm } from '../base/units';
import type { Outline } from '../document/outline';
import type { Point } from './geometry';
import { type Orientation, oriented } from './orientation';

/** A mounting hole as it lies before the person. */
export interface HoleShape {
  readonly hole: string;
  readonly label: string;
  readonly centre: Point;
  readonly radius: Mm;
}

/** What a hole is drawn as where the sheet does not say how wide it is. */
const USUAL_RADIUS: Mm = 1.5;

export function holesOf({ holes = [] }: Outline, orientation: Orientation): readonly HoleShape[] {
  return holes.map(({ id, label = '', xMm, yMm, diameterMm }) => ({
    hole: id,
    label,
    centre: oriented(orientation, { x: xMm, y: yMm }),
    radius: diameterMm === undefined ? USUAL_RADIUS : diameterMm / 2,
  }));
}
