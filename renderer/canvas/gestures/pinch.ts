import type { Point } from '../../../boards/drawing/geometry';
import type { ViewHandle } from '../view-handle';

/** Two fingers on the canvas: the drawing's points under them stay under them. */
export function pinch(view: ViewHandle, before: readonly [Point, Point], now: readonly [Point, Point]): void {
  const spread = ([a, b]: readonly [Point, Point]) => Math.max(1, Math.hypot(a.x - b.x, a.y - b.y));
  const middle = ([a, b]: readonly [Point, Point]) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  const from = middle(before);
  const to = middle(now);
  view.panBy(to.x - from.x, to.y - from.y);
  view.zoomAt(spread(now) / spread(before), to);
}
