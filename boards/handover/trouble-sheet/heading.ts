import type { Mm } from '../../base/units';
import type { Measure } from '../../drawing/measure';
import { gap, type Piece, type Strip } from '../page/flow';
import { linesOf } from '../page/paragraph';
import { lineHeight, linesAt, TYPES } from '../page/type';
import { TROUBLE_PART_WORDS, TROUBLE_TITLES, type TroublePart } from './trouble-words';

/** As much of a part as has to stand on the page of its head. */
const COMPANY_MM: Mm = 25;

/** The head of a part: its title under a rule, what is to be known, and the mark by which its page is told. */
export function troubleHeading(part: TroublePart, widthMm: Mm, measure: Measure): readonly Piece[] {
  const lines = linesOf(TROUBLE_PART_WORDS[part], widthMm, TYPES.soft, measure);
  const titleMm = lineHeight(TYPES.heading);
  const strip: Strip = {
    heightMm: 2 + titleMm + lines.length * lineHeight(TYPES.soft) + 2.5,
    draw: ({ x, y }) => [
      { kind: 'line', from: { x, y }, to: { x: x + widthMm, y }, stroke: { ink: 'ink', widthMm: 0.5 } },
      ...linesAt([TROUBLE_TITLES[part]], { x, y: y + 2 }, TYPES.heading, measure),
      ...linesAt(lines, { x, y: y + 2 + titleMm }, TYPES.soft, measure),
    ],
  };
  return [
    { kind: 'keep', heightMm: strip.heightMm + 1 + COMPANY_MM },
    { kind: 'mark', mark: part },
    { kind: 'strip', strip },
    gap(1),
  ];
}
