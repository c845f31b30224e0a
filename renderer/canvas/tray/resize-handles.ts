import type { Mm } from '../../../boards/base/units';
import type { Point, Rect } from '../../../boards/drawing/geometry';

/** Which sides of a rectangle a handle moves: −1 the left or the top one, 1 the other, 0 none. */
export interface Handle {
  readonly across: -1 | 0 | 1;
  readonly down: -1 | 0 | 1;
}

const STEPS = [-1, 0, 1] as const;

/** At the corners and in the middle of every side. */
export const HANDLES: readonly Handle[] = STEPS.flatMap((across) =>
  STEPS.filter((down) => across !== 0 || down !== 0).map((down) => ({ across, down })),
);

export function handleAt({ x, y, width, height }: Rect, { across, down }: Handle): Point {
  return { x: x + ((across + 1) / 2) * width, y: y + ((down + 1) / 2) * height };
}

/** The handle of a rectangle that is nearest to a point, within reach. */
export function handleUnder(rect: Rect, point: Point, reach: Mm): Handle | undefined {
  const away = (handle: Handle) => {
    const at = handleAt(rect, handle);
    return Math.hypot(at.x - point.x, at.y - point.y);
  };
  const near = HANDLES.filter((handle) => away(handle) <= reach);
  return near.toSorted((a, b) => away(a) - away(b))[0];
}

/** The rectangle with one of its handles taken to a point; the other sides stay, and none is passed. */
export function resized({ x, y, width, height }: Rect, { across, down }: Handle, to: Point): Rect {
  const [left, right] = moved(x, x + width, across, to.x);
  const [top, bottom] = moved(y, y + height, down, to.y);
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** No side comes nearer to the other than a millimetre. */
const LEAST_MM: Mm = 1;

function moved(from: Mm, to: Mm, which: -1 | 0 | 1, at: Mm): readonly [Mm, Mm] {
  if (which === -1) return [Math.min(at, to - LEAST_MM), to];
  if (which === 1) return [from, Math.max(at, from + LEAST_MM)];
  return [from, to];
}
