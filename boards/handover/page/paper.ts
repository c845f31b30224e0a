import type { Mm } from '../../base/units';

/** Sheets of paper, upright. A4: ISO 216. Letter: ANSI/ASME Y14.1, 8.5 by 11 in. */
export const PAPERS = {
  a4: { name: 'A4', widthMm: 210, heightMm: 297 },
  letter: { name: 'Letter', widthMm: 215.9, heightMm: 279.4 },
} as const satisfies Record<string, PaperSize>;

export const PAPER_IDS = ['a4', 'letter'] as const satisfies readonly (keyof typeof PAPERS)[];

export interface PaperSize {
  readonly name: string;
  readonly widthMm: Mm;
  readonly heightMm: Mm;
}

/** Left free all round: no printer needs more, and a hole punch takes less. */
export const MARGIN_MM: Mm = 14;

/** A printer's point: 1/72 in. */
export const MM_PER_POINT = 25.4 / 72;

/** More pages than anybody pins up; a sheet that needs more is printed by the connector. */
export const MOST_PAGES = 200;
