import type { Mm } from '../../base/units';
import type { Measure } from '../../drawing/measure';
import { severitySign } from '../bench-sheet/severity-sign';
import type { Strip } from '../page/flow';
import { linesOf } from '../page/paragraph';
import { lineHeight, linesAt, TYPES } from '../page/type';

const PAD: Mm = 3.5;
const SIGN_MM: Mm = 6;

/** What keeps anything from being tried, and what to do instead, in a box that nobody can overlook. */
export function stopBox(title: string, words: readonly string[], widthMm: Mm, measure: Measure): Strip {
  const left = PAD + 2 * SIGN_MM + PAD;
  const room = widthMm - left - PAD;
  const titles = linesOf(title, room, TYPES.heading, measure);
  const lines = words.flatMap((line) => linesOf(line, room, TYPES.strong, measure));
  const titlesMm = titles.length * lineHeight(TYPES.heading);
  const textMm = titlesMm + lines.length * lineHeight(TYPES.strong);
  const heightMm = Math.max(textMm, 2 * SIGN_MM) + 2 * PAD;
  return {
    heightMm,
    draw: ({ x, y }) => [
      {
        kind: 'rect',
        box: { x: x + 0.5, y: y + 0.5, width: widthMm - 1, height: heightMm - 1 },
        paint: { fill: 'faint', stroke: { ink: 'ink', widthMm: 1 } },
      },
      ...severitySign('danger', { x: x + PAD + SIGN_MM, y: y + heightMm / 2 }, SIGN_MM, measure),
      ...linesAt(titles, { x: x + left, y: y + PAD }, TYPES.heading, measure),
      ...linesAt(lines, { x: x + left, y: y + PAD + titlesMm }, TYPES.strong, measure),
    ],
  };
}
