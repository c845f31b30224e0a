import type { Mm } from '../../../boards/base/units';
import { overlap, type Point, type Rect } from '../../../boards/drawing/geometry';

/** Rectangles with something attached, found again by place. */
export interface RectBuckets<T> {
  readonly add: (rect: Rect, item: T) => void;
  /** Everything that shares area with a rectangle, each once, in the order of adding. */
  readonly meeting: (rect: Rect) => readonly T[];
  /** Whether anything that counts shares area with a rectangle; looks no further than the first that does. */
  readonly isTaken: (rect: Rect, counts?: (item: T) => boolean) => boolean;
  /** The same as `meeting`, and everything that only its edge touches: a line has no area. */
  readonly touching: (rect: Rect) => readonly T[];
  /** Everything whose rectangle holds a point, edges included, in the order of adding. */
  readonly at: (point: Point) => readonly T[];
}

interface Entry<T> {
  readonly order: number;
  readonly rect: Rect;
  readonly item: T;
}

/** How wide a bucket is where nothing else is asked for. */
export const USUAL_BUCKET: Mm = 12;
/** More than any drawing has buckets across, so that column and row make one number. */
const COLUMN = 2 ** 24;

/**
 * A plain grid of buckets: boards are spread evenly enough for it, and it costs nothing to build.
 *
 * @param bucket how wide one is; where most rectangles are far larger than usual, as large as they are
 */
export function rectBuckets<T>(bucket: Mm = USUAL_BUCKET): RectBuckets<T> {
  const buckets = new Map<number, Entry<T>[]>();
  let count = 0;

  function keysOf({ x, y, width, height }: Rect): readonly number[] {
    const [left, right] = [Math.floor(x / bucket), Math.floor((x + width) / bucket)];
    const [top, bottom] = [Math.floor(y / bucket), Math.floor((y + height) / bucket)];
    const keys: number[] = [];
    for (let column = left; column <= right; column += 1)
      for (let row = top; row <= bottom; row += 1) keys.push(column * COLUMN + row);
    return keys;
  }

  function found(rect: Rect, accept: (entry: Entry<T>) => boolean): readonly T[] {
    const entries = new Set<Entry<T>>();
    for (const key of keysOf(rect))
      for (const entry of buckets.get(key) ?? []) if (accept(entry)) entries.add(entry);
    return [...entries].sort((a, b) => a.order - b.order).map((entry) => entry.item);
  }

  return {
    add: (rect, item) => {
      const entry = { order: count, rect, item };
      count += 1;
      for (const key of keysOf(rect)) {
        const bucket = buckets.get(key);
        if (bucket) bucket.push(entry);
        else buckets.set(key, [entry]);
      }
    },
    meeting: (rect) => found(rect, (entry) => overlap(entry.rect, rect)),
    isTaken: (rect, counts = () => true) => {
      for (const key of keysOf(rect))
        if (buckets.get(key)?.some((entry) => overlap(entry.rect, rect) && counts(entry.item))) return true;
      return false;
    },
    touching: (rect) => found(rect, (entry) => touch(entry.rect, rect)),
    at: (point) =>
      found(
        { ...point, width: 0, height: 0 },
        ({ rect }) =>
          point.x >= rect.x &&
          point.x <= rect.x + rect.width &&
          point.y >= rect.y &&
          point.y <= rect.y + rect.height,
      ),
  };
}

function touch(a: Rect, b: Rect): boolean {
  return a.x <= b.x + b.width && b.x <= a.x + a.width && a.y <= b.y + b.height && b.y <= a.y + a.height;
}
