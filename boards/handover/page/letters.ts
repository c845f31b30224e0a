import type { Measure } from '../../drawing/measure';

/** What of the printed fonts a layout has to know. Fonts are read on the machine side and handed in. */
export interface Letters {
  readonly measure: Measure;
  /** Whether the fonts have a shape for a character. */
  readonly has: (codePoint: number) => boolean;
}

/** Stands for what the fonts have no shape for, one for each sign as a person counts them. */
const NO_SHAPE = '▯';

export const NO_SHAPE_WORDS = `${NO_SHAPE} stands for a sign that this print has no letter for; the file has it.`;

const SIGNS = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** The text with every sign that cannot be printed replaced. Composed first: "e" and an accent are one letter. */
export function printable(text: string, { has }: Pick<Letters, 'has'>): string {
  const composed = text.normalize('NFC');
  let shown = '';
  for (const { segment } of SIGNS.segment(composed)) {
    const known = [...segment].every((character) => {
      const code = character.codePointAt(0) ?? 0;
      return character === '\n' || character === '\t' || has(code);
    });
    shown += known ? segment : NO_SHAPE;
  }
  return shown;
}
