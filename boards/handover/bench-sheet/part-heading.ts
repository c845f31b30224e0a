import type { Mm } from '../../base/units';
import type { Measure } from '../../drawing/measure';
import { gap, type Piece, type Strip } from '../page/flow';
import { linesOf } from '../page/paragraph';
import { lineHeight, linesAt, TYPES } from '../page/type';
import { PART_TITLES, PART_WORDS } from './bench-words';
import type { BenchPart } from './options';

/** As much as a head wants below it on its page where nothing else is said. */
const COMPANY_MM: Mm = 30;

/**
 * The head of a part: its title under a rule, what is to be known, and the mark by which its page is told.
 *
 * @param companyMm how much of the part has to stand on the same page
 */
export function partHeading(
  part: BenchPart,
  widthMm: Mm,
  measure: Measure,
  companyMm: Mm = COMPANY_MM,
): readonly Piece[] {
  const lines = linesOf(PART_WORDS[part], widthMm, TYPES.soft, measure);
  const titleMm = lineHeight(TYPES.heading);
  const strip: Strip = {
    heightMm: 2 + titleMm + lines.length * lineHeight(TYPES.soft) + 2.5,
    draw: ({ x, y }) => [
      { kind: 'line', from: { x, y }, to: { x: x + widthMm, y }, stroke: { ink: 'ink', widthMm: 0.5 } },
      ...linesAt([PART_TITLES[part]], { x, y: y + 2 }, TYPES.heading, measure),
      ...linesAt(lines, { x, y: y + 2 + titleMm }, TYPES.soft, measure),
    ],
  };
  return [
    { kind: 'keep', heightMm: strip.heightMm + 1 + companyMm },
    { kind: 'mark', mark: part },
    { kind: 'strip', strip },
    gap(1),
  ];
}
