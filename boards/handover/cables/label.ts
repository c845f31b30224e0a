import type { Mm } from '../../base/units';
import type { Rect } from '../../drawing/geometry';
import type { Measure } from '../../drawing/measure';
import type { Drawn } from '../page/page';
import { MM_PER_POINT } from '../page/paper';
import { linesOf } from '../page/paragraph';
import { baseline, lineHeight, type Type, textAt } from '../page/type';
import type { LabelOptions } from './label-options';
import type { LabelText } from './label-texts';

/** From the largest that a label needs down to the least that can be read. */
const POINTS = [12, 11, 10, 9, 8.5, 8, 7.5, 7, 6.5, 6];
const PAD: Mm = 1.2;
/** A flag needs that much more than the way round the cable, for the glue. */
const ROUND_EXTRA_MM: Mm = 1;

/** One label in its box: name, this end, the other end; of a flag twice, with the strip round the cable free. */
export function labelDrawn(
  text: LabelText,
  box: Rect,
  { style }: LabelOptions,
  measure: Measure,
): readonly Drawn[] {
  const outline: Drawn = {
    kind: 'rect',
    box,
    paint: { stroke: { ink: 'hair', widthMm: 0.12 } },
  };
  if (style === 'flat') return [outline, ...wordsIn(text, box, measure)];
  const strip = Math.min(box.width * 0.4, Math.PI * (text.diameterMm ?? 3) + ROUND_EXTRA_MM);
  const half = (box.width - strip) / 2;
  const right: Rect = { ...box, x: box.x + half + strip, width: half };
  const fold = (x: Mm): Drawn => ({
    kind: 'line',
    from: { x, y: box.y },
    to: { x, y: box.y + box.height },
    stroke: { ink: 'hair', widthMm: 0.12, dashMm: 1 },
  });
  return [
    outline,
    fold(box.x + half),
    fold(right.x),
    ...wordsIn(text, { ...box, width: half }, measure),
    ...wordsIn(text, right, measure),
  ];
}

/** Words as large as they fit; in the least size what does not fit is cut, and says so. */
function wordsIn({ cable, here, other }: LabelText, box: Rect, measure: Measure): readonly Drawn[] {
  const width = box.width - 2 * PAD;
  const height = box.height - 2 * PAD;
  const lines = (points: number) => {
    const strong = typeOf('strong', points);
    const plain = typeOf('text', points);
    return [
      ...linesOf(cable, width, strong, measure).map((line) => ({ line, type: strong })),
      ...linesOf(here, width, plain, measure).map((line) => ({ line, type: plain })),
      ...linesOf(`other end: ${other}`, width, plain, measure).map((line) => ({ line, type: plain })),
    ];
  };
  const heightOf = (set: readonly SetLine[]) => set.reduce((sum, { type }) => sum + lineHeight(type), 0);
  const points = POINTS.find((each) => heightOf(lines(each)) <= height) ?? POINTS.at(-1) ?? 6;
  const fitting = cutTo(lines(points), height);
  let y = box.y + PAD + (height - heightOf(fitting)) / 2;
  return fitting.map(({ line, type }) => {
    const drawn = textAt(line, { x: box.x + PAD, y: y + baseline(type) }, type, measure);
    y += lineHeight(type);
    return drawn;
  });
}

interface SetLine {
  readonly line: string;
  readonly type: Type;
}

function cutTo(lines: readonly SetLine[], heightMm: Mm): readonly SetLine[] {
  const kept: SetLine[] = [];
  let y = 0;
  for (const each of lines) {
    y += lineHeight(each.type);
    if (y > heightMm + 1e-6) break;
    kept.push(each);
  }
  const last = kept.at(-1);
  if (kept.length === lines.length || last === undefined) return kept;
  return [...kept.slice(0, -1), { ...last, line: `${last.line.slice(0, -1)}…` }];
}

function typeOf(face: Type['face'], points: number): Type {
  return { face, sizeMm: points * MM_PER_POINT, ink: 'ink' };
}
