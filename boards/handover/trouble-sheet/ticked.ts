import type { Mm } from '../../base/units';
import type { Measure } from '../../drawing/measure';
import { TICK_MM, tickBox } from '../bench-sheet/tick-box';
import type { Strip } from '../page/flow';
import { linesOf } from '../page/paragraph';
import { baseline, lineHeight, linesAt, TYPES, textAt } from '../page/type';

const BETWEEN: Mm = 2;
const CHOICE_MM: Mm = 14;

/** A box to tick, with words in two weights beside it. */
export function tickLine(
  strong: string,
  plain: string,
  place: { readonly leftMm: Mm; readonly widthMm: Mm },
  measure: Measure,
): Strip {
  const { leftMm, widthMm } = place;
  const left = leftMm + TICK_MM + BETWEEN;
  const room = widthMm - left;
  const titles = linesOf(strong, room, TYPES.strong, measure);
  const lines = plain === '' ? [] : linesOf(plain, room, TYPES.cell, measure);
  const titlesMm = titles.length * lineHeight(TYPES.strong);
  return {
    heightMm: Math.max(TICK_MM, titlesMm + lines.length * lineHeight(TYPES.cell)) + 1.5,
    draw: ({ x, y }) => [
      tickBox({ x: x + leftMm, y }),
      ...linesAt(titles, { x: x + left, y }, TYPES.strong, measure),
      ...linesAt(lines, { x: x + left, y: y + titlesMm }, TYPES.cell, measure),
    ],
  };
}

/** A question with a box for yes and one for no. */
export function yesNoLine(question: string, sign: string, widthMm: Mm, measure: Measure): Strip {
  const left = 2 * (TICK_MM + CHOICE_MM);
  const room = widthMm - left;
  const titles = linesOf(question, room, TYPES.strong, measure);
  const lines = linesOf(sign, room, TYPES.cell, measure);
  const titlesMm = titles.length * lineHeight(TYPES.strong);
  return {
    heightMm: titlesMm + lines.length * lineHeight(TYPES.cell) + 1.5,
    draw: ({ x, y }) => [
      ...['yes', 'no'].flatMap((words, at) => {
        const start = x + at * (TICK_MM + CHOICE_MM);
        const down = y + baseline(TYPES.body);
        return [
          tickBox({ x: start, y }),
          textAt(words, { x: start + TICK_MM + BETWEEN, y: down }, TYPES.body, measure),
        ];
      }),
      ...linesAt(titles, { x: x + left, y }, TYPES.strong, measure),
      ...linesAt(lines, { x: x + left, y: y + titlesMm }, TYPES.cell, measure),
    ],
  };
}
