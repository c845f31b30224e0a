/** Signs that look alike, and what is not seen at all. */
const DASHES = /[\u2010-\u2015\u2212\ufe58\ufe63\u00ad]/g;
const UNSEEN = /[\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;
const CONTROLS = /[^\P{Cc}\t\n\r]/gu;
const BREAKS = /\p{Zl}|\p{Zp}/gu;

/** Text as it would be typed: one kind of dash, plain spaces (tabs stay), nothing unseen, ligatures apart. */
export function plainText(text: string): string {
  return text
    .normalize('NFKC')
    .replace(UNSEEN, '')
    .replace(DASHES, '-')
    .replace(BREAKS, '\n')
    .replace(CONTROLS, ' ')
    .replace(/[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g, ' ');
}

/** The pieces of a word in capitals: "H.D.D. LED" is HDD and LED, "+3.3V" is 3.3V. */
export function piecesOf(word: string): readonly string[] {
  return word
    .toUpperCase()
    .split(/[^A-Z0-9.]+/)
    .map((piece) => piece.replace(/(?<!\d)\.|\.(?!\d)/g, ''))
    .filter((piece) => piece !== '');
}

/** What two ways of writing a word have in common. */
export function keyOf(pieces: readonly string[]): string {
  return pieces.join('');
}
