export type Sign = 'plus' | 'minus';

const PLUS: ReadonlySet<string> = new Set(['PLUS', 'POS', 'POSITIVE', 'ANODE', 'VE+', 'AN']);
const MINUS: ReadonlySet<string> = new Set(['MINUS', 'NEG', 'NEGATIVE', 'CATHODE', 'KATHODE', 'VE-', 'CATH']);

/** A single letter is a sign only behind a word that comes in pairs: "HD_LED_P", "D_N", "LED_K". */
const LETTERS: Readonly<Record<string, Sign>> = { P: 'plus', A: 'plus', N: 'minus', M: 'minus', K: 'minus' };

/** The sign that a piece of a word spells out. */
export function spelltSign(piece: string): Sign | undefined {
  if (PLUS.has(piece)) return 'plus';
  return MINUS.has(piece) ? 'minus' : undefined;
}

export function letterSign(letter: string): Sign | undefined {
  return LETTERS[letter];
}

/** A word with one of its plus and minus signs taken for what it may be. */
export interface Signed {
  readonly stem: string;
  readonly sign?: Sign;
}

/** More signs than this stand in no name of a pin. */
const MOST_SIGNS = 4;

/**
 * The ways to read the signs of a word, the likeliest first: a sign at the end, at the beginning, a plus
 * inside, a minus before a space or a number, and none at all, every hyphen a joint.
 */
export function signedWays(word: string): readonly Signed[] {
  const text = word.trim();
  const places = [...text.matchAll(/[+-]/g)].slice(0, MOST_SIGNS).map(({ index }) => index);
  const last = text.length - 1;
  const rank = (at: number): number => {
    if (at === last) return 0;
    if (at === 0) return 1;
    if (text[at] === '+') return 2;
    return /^-(?:\s|\d)/.test(text.slice(at)) && /\w/.test(text[at - 1] ?? '') ? 3 : 9;
  };
  const signed = places
    .filter((at) => rank(at) < 9)
    .toSorted((a, b) => rank(a) - rank(b))
    .map(
      (at): Signed => ({
        stem: `${text.slice(0, at)} ${text.slice(at + 1)}`.trim(),
        sign: text[at] === '+' ? 'plus' : 'minus',
      }),
    );
  return [...signed, { stem: text }];
}
