import { centreOf, type Point, type Rect } from '../../boards/drawing/geometry';

/** Where the drawing lies under the window: screen = millimetres × scale + offset, in CSS pixels. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface SizePx {
  readonly width: number;
  readonly height: number;
}

/** Pixels a millimetre: a large board in a window zoomed to 200 %, and a pin as wide as a hand. */
export const SCALE_LIMITS = { least: 0.4, most: 120 } as const;

function limited(scale: number): number {
  return Math.min(SCALE_LIMITS.most, Math.max(SCALE_LIMITS.least, scale));
}

/** Nearer or further, with the drawing's point under the pointer staying there. */
export function zoomedAt(view: View, factor: number, at: Point): View {
  const scale = limited(view.scale * factor);
  const ratio = scale / view.scale;
  return { scale, x: at.x - (at.x - view.x) * ratio, y: at.y - (at.y - view.y) * ratio };
}

export function pannedBy(view: View, dx: number, dy: number): View {
  return { ...view, x: view.x + dx, y: view.y + dy };
}

/** The nearest view that shows a rectangle whole, in the middle, but no nearer than `most`. */
export function fitted(rect: Rect, size: SizePx, marginPx: number, most: number): View {
  const width = Math.max(1, size.width - 2 * marginPx) / Math.max(rect.width, 1e-6);
  const height = Math.max(1, size.height - 2 * marginPx) / Math.max(rect.height, 1e-6);
  const scale = limited(Math.min(width, height, most));
  const centre = centreOf(rect);
  return { scale, x: size.width / 2 - centre.x * scale, y: size.height / 2 - centre.y * scale };
}

export function toMm(view: View, screen: Point): Point {
  return { x: (screen.x - view.x) / view.scale, y: (screen.y - view.y) / view.scale };
}

export function toScreen(view: View, point: Point): Point {
  return { x: point.x * view.scale + view.x, y: point.y * view.scale + view.y };
}

/** What of the drawing can be seen. */
export function windowOf(view: View, size: SizePx): Rect {
  const { x, y } = toMm(view, { x: 0, y: 0 });
  return { x, y, width: size.width / view.scale, height: size.height / view.scale };
}
