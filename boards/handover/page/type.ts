import type { Mm } from '../../base/units';
import type { Point } from '../../drawing/geometry';
import type { Face, Measure } from '../../drawing/measure';
import type { Ink } from './inks';
import type { DrawnText } from './page';
import { MM_PER_POINT } from './paper';

/** A manner of setting text. */
export interface Type {
  readonly face: Face;
  readonly sizeMm: Mm;
  readonly ink: Ink;
}

function type(face: Face, points: number, ink: Ink = 'ink'): Type {
  return { face, sizeMm: points * MM_PER_POINT, ink };
}

/** The types of a page, from the largest down. Nothing that has to be read is below 7.5 points. */
export const TYPES = {
  title: type('strong', 18),
  heading: type('strong', 12),
  body: type('text', 9),
  soft: type('text', 9, 'soft'),
  strong: type('strong', 9),
  pin: type('mono', 9.5),
  cell: type('text', 8.5),
  head: type('strong', 8),
  small: type('text', 8, 'soft'),
  least: type('text', 7.5, 'soft'),
} as const satisfies Record<string, Type>;

/** From one line of text to the next, in sizes of the type. */
const LINE = 1.28;
/** How high capitals stand over the line, in sizes of the type (0.668 in the printed fonts). */
const CAPITAL = 0.668;

export function lineHeight({ sizeMm }: Type): Mm {
  return sizeMm * LINE;
}

/** Down from the top of a line's room to the line its letters stand on. */
export function baseline({ sizeMm }: Type): Mm {
  return sizeMm * (LINE / 2 + CAPITAL / 2);
}

/** Down from the middle of capitals and numbers to the line they stand on. */
export function halfCapital(sizeMm: Mm): Mm {
  return (sizeMm * CAPITAL) / 2;
}

/** Text with its letters standing on the line through a point. */
export function textAt(
  text: string,
  at: Point,
  { face, sizeMm, ink }: Type,
  measure: Measure,
  anchor: DrawnText['anchor'] = 'start',
): DrawnText {
  return { kind: 'text', text, at, anchor, sizeMm, face, ink, widthMm: measure(text, sizeMm, face) };
}

/** Lines below each other in a column; the point is the column's top left corner. */
export function linesAt(
  lines: readonly string[],
  at: Point,
  type: Type,
  measure: Measure,
): readonly DrawnText[] {
  const height = lineHeight(type);
  return lines.map((line, index) =>
    textAt(line, { x: at.x, y: at.y + index * height + baseline(type) }, type, measure),
  );
}
