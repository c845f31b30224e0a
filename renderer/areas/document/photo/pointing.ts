import type { PlanePoint } from '../../../../boards/pinout/photo/matrix3';
import type { PictureSize, PinPoint } from '../../../../boards/pinout/photo/pointed';
import type { KeyPress } from '../../../actions/shortcut';
import { arrowStep } from '../../../look/arrow-keys';

/** So many pins are asked for: four hold the grid, and two more show whether one of them is off. */
const ASKED_FOR = 6;

/** The pin to point at next: the one that was chosen, or the first that is asked for and not pointed at yet. */
export function nextPin(
  order: readonly string[],
  points: readonly PinPoint[],
  chosen: string | null,
): string | null {
  const pointed = new Set(points.map(({ pin }) => pin));
  if (chosen !== null && !pointed.has(chosen)) return chosen;
  if (points.length >= ASKED_FOR) return null;
  return order.find((pin) => !pointed.has(pin)) ?? null;
}

/** The points with one of them put somewhere, new or moved; kept inside the picture, to a hundredth of a pixel. */
export function withPoint(
  points: readonly PinPoint[],
  pin: string,
  place: PlanePoint,
  picture: PictureSize,
): readonly PinPoint[] {
  const { x, y } = inside(place, picture);
  const put: PinPoint = { pin, xPx: rounded(x), yPx: rounded(y) };
  return points.some((point) => point.pin === pin)
    ? points.map((point) => (point.pin === pin ? put : point))
    : [...points, put];
}

export function inside({ x, y }: PlanePoint, { widthPx, heightPx }: PictureSize): PlanePoint {
  return { x: Math.min(widthPx, Math.max(0, x)), y: Math.min(heightPx, Math.max(0, y)) };
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}

/** The point nearest to a place, where one is within reach. */
export function pointNear(
  points: readonly PinPoint[],
  { x, y }: PlanePoint,
  reachPx: number,
): string | undefined {
  const away = ({ xPx, yPx }: PinPoint) => Math.hypot(xPx - x, yPx - y);
  return points.filter((point) => away(point) <= reachPx).toSorted((a, b) => away(a) - away(b))[0]?.pin;
}

/** How far an arrow key moves a point, in pixels: one; ten with Shift, a hundred with Ctrl, a tenth with Alt. */
export function nudge({ key, shiftKey, altKey, ctrlKey }: Omit<KeyPress, 'metaKey'>): PlanePoint | null {
  const direction = arrowStep(key);
  if (direction === undefined) return null;
  const step = ctrlKey ? 100 : shiftKey ? 10 : altKey ? 0.1 : 1;
  return { x: direction.x * step, y: direction.y * step };
}
