import type { Mm } from '../../base/units';
import type { Measure } from '../../drawing/measure';
import type { Type } from './type';

/**
 * The whole text in lines of at most a width: broken at spaces, and inside a word that is too long for a
 * line of its own. Breaks of the text itself are kept. Nothing is left out.
 */
export function linesOf(
  text: string,
  widthMm: Mm,
  { face, sizeMm }: Type,
  measure: Measure,
): readonly string[] {
  const fits = (line: string) => measure(line, sizeMm, face) <= widthMm + 1e-6;
  return text.split('\n').flatMap((line) =>
    filled(
      line.split(/[ \t]+/).filter((word) => word !== ''),
      fits,
    ),
  );
}

function filled(words: readonly string[], fits: (line: string) => boolean): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const parts = fits(word) ? [word] : cut(word, fits);
    lines.push(...parts.slice(0, -1));
    line = parts.at(-1) ?? '';
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line];
}

/** A word too long for a line in pieces that fit; at least one letter each, so that it ends. */
function cut(word: string, fits: (line: string) => boolean): readonly string[] {
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (part !== '' && !fits(part + letter)) {
      parts.push(part);
      part = '';
    }
    part += letter;
  }
  return [...parts, part];
}
