import type { Turn } from '../base/units';
import type { Build } from '../document/build';
import type { Point } from './geometry';

/** One of the eight ways a board can lie: quarter turns and a mirror image. Maps (x, y) by whole numbers. */
export interface Orientation {
  readonly xx: number;
  readonly xy: number;
  readonly yx: number;
  readonly yy: number;
}

const QUARTERS: Readonly<Record<Turn, Orientation>> = {
  0: { xx: 1, xy: 0, yx: 0, yy: 1 },
  90: { xx: 0, xy: -1, yx: 1, yy: 0 },
  180: { xx: -1, xy: 0, yx: 0, yy: -1 },
  270: { xx: 0, xy: 1, yx: -1, yy: 0 },
};
const MIRROR: Orientation = { xx: -1, xy: 0, yx: 0, yy: 1 };

/** A turn clockwise, with y pointing down. */
export function turned(turn: Turn): Orientation {
  return QUARTERS[turn];
}

/** First one, then the other. */
export function followedBy(first: Orientation, second: Orientation): Orientation {
  // Adding 0 makes a plain zero of a negative one.
  return {
    xx: second.xx * first.xx + second.xy * first.yx + 0,
    xy: second.xx * first.xy + second.xy * first.yy + 0,
    yx: second.yx * first.xx + second.yy * first.yx + 0,
    yy: second.yx * first.xy + second.yy * first.yy + 0,
  };
}

/**
 * Board to drawing. The mirror comes first, so that a quarter turn of the view always turns
 * clockwise before the eyes, mirrored or not.
 */
export function orientationOf(view: Build['view']): Orientation {
  return view.mirrored ? followedBy(MIRROR, turned(view.turn)) : turned(view.turn);
}

export function oriented(orientation: Orientation, point: Point): Point {
  return {
    x: orientation.xx * point.x + orientation.xy * point.y,
    y: orientation.yx * point.x + orientation.yy * point.y,
  };
}

/** Drawing back to board; the matrices are orthogonal, so turning them over undoes them. */
export function undone(orientation: Orientation): Orientation {
  return { xx: orientation.xx, xy: orientation.yx, yx: orientation.xy, yy: orientation.yy };
}
