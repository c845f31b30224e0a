import type { Mm } from '../base/units';
import type { Face, Measure } from './measure';

const ELLIPSIS = '…';

/** Pieces that may stand on a line of their own. A lone sign or unit stays with the word before it. */
function pieces(text: string): readonly string[] {
  const found: string[] = [];
  for (const word of text.split(/[ \t]+/).filter((part) => part !== '')) {
    const before = found.at(-1);
    if (before !== undefined && [...word].length === 1) found[found.length - 1] = `${before} ${word}`;
    else found.push(...word.split(/(?<=[\p{L}\d][-/_])(?=[\p{L}\d])/u));
  }
  return found;
}

/** Joins as the text had it: nothing after a hyphen, a stroke or a low line, a space otherwise. */
function joined(line: string, piece: string): string {
  return /[-/_]$/.test(line) && line.length > 1 ? `${line}${piece}` : `${line} ${piece}`;
}

/** The text in as few lines as the width allows; undefined when a piece is too wide or lines run out. */
export function wrapped(
  text: string,
  fits: (line: string) => boolean,
  mostLines: number,
): readonly string[] | undefined {
  const lines: string[] = [];
  for (const piece of pieces(text)) {
    if (!fits(piece)) return undefined;
    const last = lines.at(-1);
    const longer = last === undefined ? undefined : joined(last, piece);
    if (longer !== undefined && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(piece);
    if (lines.length > mostLines) return undefined;
  }
  return lines;
}

/** As much of the text as fits, closed by an ellipsis; empty when not even that fits. */
export function shortened(text: string, width: Mm, sizeMm: Mm, face: Face, measure: Measure): string {
  if (measure(text, sizeMm, face) <= width) return text;
  const characters = [...text];
  for (let length = characters.length - 1; length > 0; length -= 1) {
    const candidate = `${characters.slice(0, length).join('').trimEnd()}${ELLIPSIS}`;
    if (measure(candidate, sizeMm, face) <= width) return candidate;
  }
  return measure(ELLIPSIS, sizeMm, face) <= width ? ELLIPSIS : '';
}
