import type { Mm } from '../../../boards/base/units';
import type { Line, Point, Rect } from '../../../boards/drawing/geometry';
import type { Face } from '../../../boards/drawing/measure';
import { SIZES } from '../../../boards/drawing/sizes';
import type { Palette } from './palette';

/** What every drawing function gets: where to, how near, in which colours. */
export interface Pen {
  readonly context: CanvasRenderingContext2D;
  /** Device-independent pixels a millimetre. */
  readonly scale: number;
  /** What can be seen, in oriented millimetres. */
  readonly window: Rect;
  readonly palette: Palette;
}

/** Text smaller than this cannot be read, and is left out. */
const LEAST_TEXT_PX = 6;
/** Text is set large and scaled down, for browsers round the advances of tiny type. */
const UNITS_PER_MM = 64;
const WEIGHTS: Readonly<Record<Face, number>> = { text: 400, strong: 650, mono: 600 };
/** Height of a capital letter, in type sizes. */
const CAP = 0.672;

export function isReadable(pen: Pick<Pen, 'scale'>, sizeMm: Mm): boolean {
  return sizeMm * pen.scale >= LEAST_TEXT_PX;
}

/** A line's width: so many pixels, and no thinner than some millimetres when near. */
export function stroke(pen: Pen, pixels: number, leastMm: Mm = 0): Mm {
  return Math.max(pixels / pen.scale, leastMm);
}

export function traceLine(context: CanvasRenderingContext2D, [from, to]: Line): void {
  context.moveTo(from.x, from.y);
  context.lineTo(to.x, to.y);
}

export function tracePath(
  context: CanvasRenderingContext2D,
  points: readonly Point[],
  closed: boolean,
): void {
  points.forEach((point, index) => {
    if (index === 0) context.moveTo(point.x, point.y);
    else context.lineTo(point.x, point.y);
  });
  if (closed) context.closePath();
}

/** An open path whose corners are rounded off. */
export function traceRounded(context: CanvasRenderingContext2D, points: readonly Point[], radius: Mm): void {
  const [first] = points;
  const last = points.at(-1);
  if (!first || !last) return;
  context.moveTo(first.x, first.y);
  for (let index = 1; index < points.length - 1; index += 1) {
    const corner = points[index];
    const next = points[index + 1];
    if (corner && next) context.arcTo(corner.x, corner.y, next.x, next.y, radius);
  }
  context.lineTo(last.x, last.y);
}

export function traceRect(context: CanvasRenderingContext2D, { x, y, width, height }: Rect): void {
  context.rect(x, y, width, height);
}

export interface TextLine {
  readonly text: string;
  readonly at: Point;
  readonly sizeMm: Mm;
  readonly face: Face;
  readonly align?: CanvasTextAlign;
  /** Reads from bottom to top. */
  readonly upright?: boolean;
}

/** Sets a line of text with the middle of its capitals at a point. Colour is the context's fill. */
export function drawText(pen: Pen, line: TextLine): void {
  const { context, palette } = pen;
  const family = line.face === 'mono' ? palette.monoFace : palette.textFace;
  context.save();
  context.translate(line.at.x, line.at.y);
  if (line.upright) context.rotate(-Math.PI / 2);
  context.scale(1 / UNITS_PER_MM, 1 / UNITS_PER_MM);
  context.font = `${WEIGHTS[line.face]} ${line.sizeMm * UNITS_PER_MM}px ${family}`;
  context.textAlign = line.align ?? 'center';
  context.textBaseline = 'alphabetic';
  context.textRendering = 'geometricPrecision';
  context.fillText(line.text, 0, (line.sizeMm * UNITS_PER_MM * CAP) / 2);
  context.restore();
}

/** Middle lines of text stacked in a box, top to bottom. */
export function lineMiddles(count: number, top: Mm, sizeMm: Mm): readonly Mm[] {
  const height = sizeMm * SIZES.lineHeight;
  return Array.from({ length: count }, (_, index) => top + (index + 0.5) * height);
}
