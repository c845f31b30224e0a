import type { Mm } from '../../base/units';
import type { Rect } from '../../drawing/geometry';
import { shortened } from '../../drawing/lines-of-text';
import type { Measure } from '../../drawing/measure';
import { PAPER_CAUTION } from '../caution-words';
import type { Drawn } from './page';
import { MARGIN_MM, type PaperSize } from './paper';
import { linesOf } from './paragraph';
import { baseline, lineHeight, linesAt, TYPES, textAt } from './type';

const GAP: Mm = 1.6;

export interface Foot {
  readonly heightMm: Mm;
  readonly draw: (page: number, pages: number) => readonly Drawn[];
}

/**
 * The foot of every page: the cautions, what page it is, when it was printed, what it belongs to, and its number.
 *
 * @param what what the page shows, or how the board lies on it: always there in full, whatever the name
 */
export function footOf(
  size: PaperSize,
  { name, what }: { readonly name: string; readonly what: string },
  printedOn: string,
  measure: Measure,
): Foot {
  const widthMm = size.widthMm - 2 * MARGIN_MM;
  const cautions = linesOf(PAPER_CAUTION, widthMm, TYPES.least, measure);
  const cautionsMm = cautions.length * lineHeight(TYPES.least);
  const heightMm = GAP + cautionsMm + GAP / 2 + lineHeight(TYPES.small);
  const top = size.heightMm - MARGIN_MM - heightMm;
  const left = MARGIN_MM;
  const right = size.widthMm - MARGIN_MM;
  return {
    heightMm,
    draw: (page, pages) => {
      const y = top + GAP + cautionsMm + GAP / 2 + baseline(TYPES.small);
      const number = `page\u00a0${page} of\u00a0${pages}`;
      const end = textAt(number, { x: right, y }, TYPES.small, measure, 'end');
      const room = widthMm - end.widthMm - 4;
      const { sizeMm, face } = TYPES.small;
      const line = shortened(`${what} · printed ${printedOn} · ${name}`, room, sizeMm, face, measure);
      return [
        {
          kind: 'line',
          from: { x: left, y: top },
          to: { x: right, y: top },
          stroke: { ink: 'ink', widthMm: 0.3 },
        },
        ...linesAt(cautions, { x: left, y: top + GAP }, TYPES.least, measure),
        textAt(line, { x: left, y }, TYPES.small, measure),
        end,
      ];
    },
  };
}

/** The room between the margins and above the foot, below what stands at the head. */
export function bodyOf(size: PaperSize, foot: Foot, headMm: Mm): Rect {
  return {
    x: MARGIN_MM,
    y: MARGIN_MM + headMm,
    width: size.widthMm - 2 * MARGIN_MM,
    height: size.heightMm - 2 * MARGIN_MM - headMm - foot.heightMm - 2 * GAP,
  };
}
