import type { Rect } from '../../../boards/drawing/geometry';
import { type RectBuckets, rectBuckets } from './rect-buckets';

/** What already stands on the drawing and may not be covered. `of` is a connector's id. */
export interface Obstacle {
  readonly kind: 'shell' | 'name' | 'plug' | 'wire' | 'flag' | 'title';
  readonly of: string;
}

export interface Obstacles {
  readonly add: (rect: Rect, obstacle: Obstacle) => void;
  /** Nothing that counts stands in any of the rectangles. */
  readonly free: (rects: readonly Rect[], counts: (obstacle: Obstacle) => boolean) => boolean;
}

export function obstacles(): Obstacles {
  const buckets: RectBuckets<Obstacle> = rectBuckets();
  return {
    add: buckets.add,
    free: (rects, counts) => rects.every((rect) => !buckets.isTaken(rect, counts)),
  };
}
