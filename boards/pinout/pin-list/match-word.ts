import { keyOf, piecesOf, plainText } from './clean';
import { withoutFillers } from './fillers';
import { type MeaningId, meaningOf } from './meanings';
import { portedWays } from './ports';
import { letterSign, type Sign, signedWays, spelltSign } from './signs';
import { asDoubt, differ, isOpen, mayBeUnused, takesBack } from './two-meanings';
import type { Meanings, Understood } from './understood';
import { entryLike, entryOf, type WordEntry } from './word-index';

/** Longer texts are prose and not the name of a pin. */
const LONGEST = 120;

/** What a word from a pin list means by itself, before anything is asked of its neighbours. Never throws. */
export function matchWord(word: string): Meanings {
  if (word.length > 2 * LONGEST) return [];
  const text = plainText(word)
    .replace(/[`"“”„*|]/g, ' ')
    .replace(/\busb\s?[23]\.\d(?:\s?gen\s?\d)?\b/gi, 'USB')
    .replace(/\s+/g, ' ')
    .replace(/[\s:;,.]+$/, '')
    .trim();
  if (text === '' || text.length > LONGEST) return [];
  if (/^[-._~=/ ]+$/.test(text) && text !== '-') return [{ means: 'key', how: 'described' }];
  const { outside, inside } = apart(text);
  const whole = known(outside) ?? parts(outside);
  if (whole === undefined) {
    const within = inside.flatMap((each) => known(each) ?? []);
    if (within.length > 0 && !/[A-Za-z0-9]/.test(outside)) return doubted(within);
    // "GND RST#" is two known words, and not one that is a letter apart from a third.
    const apart = wordByWord(outside) && described(outside);
    const told = apart ?? alike(outside) ?? described(outside) ?? (within.length > 0 ? within : undefined);
    if (told === undefined) return [];
    const surer = (one: Understood) => one.how === 'alike' || one.how === 'twofold';
    return refined(told, inside).map((one) => (surer(one) ? one : { ...one, how: 'described' }));
  }
  return refined(whole, inside);
}

/** Text outside and inside of brackets; a sign in brackets belongs to the text: "LED (+)" is "LED +". */
function apart(text: string): { readonly outside: string; readonly inside: readonly string[] } {
  const inside: string[] = [];
  const outside = text
    .replace(/[([{<]([^()[\]{}<>]*)[)\]}>]/g, (_, held: string) => {
      const sign = /^\s*([+-])\s*(?:ve)?\s*$/i.exec(held)?.[1] ?? signIn(held);
      if (sign !== undefined) return ` ${sign} `;
      inside.push(held.trim());
      return ' ';
    })
    .replace(/[()[\]{}<>]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return { outside, inside: inside.filter((each) => each !== '') };
}

function signIn(held: string): '+' | '-' | undefined {
  const pieces = piecesOf(held);
  const [piece] = pieces;
  if (pieces.length !== 1 || piece === undefined) return undefined;
  const sign = spelltSign(piece) ?? (/^[AK]$/.test(piece) ? letterSign(piece) : undefined);
  return sign && (sign === 'plus' ? '+' : '-');
}

/** The word as a whole, in any of the ways to read its signs and numbers. */
function known(text: string): Meanings | undefined {
  if (/^[+-]$/.test(text))
    return [{ means: 'some-sign', sign: text === '+' ? 'plus' : 'minus', how: 'exact' }];
  const bare = text.replace(/^[/\\~!]+|[#*~\\!]+/g, ' ').trim();
  const lowered = /^n(?=[A-Z]{2})/.test(bare) ? bare.slice(1) : bare;
  for (const { stem, sign } of signedWays(lowered)) {
    const found = lookUp(piecesOf(stem), sign, text, stem);
    if (found) return [found];
  }
  return undefined;
}

function lookUp(
  pieces: readonly string[],
  sign: Sign | undefined,
  text: string,
  stem: string,
): Understood | undefined {
  for (const some of [pieces, withoutFillers(pieces)]) {
    for (const ported of portedWays(some)) {
      const found =
        inList(ported.pieces, sign) ?? (sign === undefined ? spelltOut(ported.pieces) : undefined);
      if (found === undefined) continue;
      const { entry, sign: meant } = found;
      const printed = stem.toUpperCase().replace(/\s+/g, ' ').trim();
      const exact = ported.port === undefined && some === pieces && entry.written.has(printed);
      return {
        means: entry.means,
        ...(meant && { sign: meant }),
        ...(ported.port !== undefined && { port: ported.port }),
        how: exact && (sign !== undefined || text.length === stem.length) ? 'exact' : 'normalised',
      };
    }
  }
  return undefined;
}

interface Found {
  readonly entry: WordEntry;
  readonly sign: Sign | undefined;
}

function inList(pieces: readonly string[], sign: Sign | undefined): Found | undefined {
  const entry = entryOf(keyOf(pieces));
  if (entry === undefined) return undefined;
  if (sign === undefined) return { entry, sign: entry.sign };
  const meaning = meaningOf(entry.means);
  if (entry.sign !== undefined) return entry.sign === sign ? { entry, sign } : undefined;
  const takes = meaning[sign] !== undefined || isOpen(entry.means);
  return takes ? { entry, sign } : sign === 'plus' && meaning.bare ? { entry, sign: undefined } : undefined;
}

/** "HD LED ANODE", "HD_LED_P", "HDLEDP": the sign spelt out behind, before, or as a last letter. */
function spelltOut(pieces: readonly string[]): Found | undefined {
  const last = pieces.at(-1) ?? '';
  const first = pieces[0] ?? '';
  const ways: readonly (readonly [Sign | undefined, readonly string[], boolean])[] = [
    [spelltSign(last), pieces.slice(0, -1), false],
    [spelltSign(first), pieces.slice(1), false],
    [last.length === 1 ? letterSign(last) : undefined, pieces.slice(0, -1), true],
    [letterSign(last.slice(-1)), [...pieces.slice(0, -1), last.slice(0, -1)], true],
  ];
  for (const [sign, rest, letter] of ways) {
    if (sign === undefined || rest.every((piece) => piece === '')) continue;
    const entry = entryOf(keyOf(rest));
    if (entry === undefined || entry.sign !== undefined) continue;
    const meaning = meaningOf(entry.means);
    const pair = (meaning.plus !== undefined && meaning.bare === undefined) || isOpen(entry.means);
    if (letter && !pair) continue;
    if (letter && /[AK]$/.test(last) && !/led$/.test(entry.means)) continue;
    if (meaning[sign] !== undefined || isOpen(entry.means)) return { entry, sign };
  }
  return undefined;
}

/** The meanings as they stand, or as a doubt where only one of them can be meant. */
function doubted(meanings: Meanings): Meanings {
  const [first, ...others] = meanings;
  return first && others.some((other) => differ(first, other)) ? asDoubt(meanings) : meanings;
}

/** "NC / reserved": each part for itself, the first that is understood before the others; "GND or +5V" is a doubt. */
function parts(text: string): Meanings | undefined {
  const pieces = text.split(/\s*[/|;]\s*|\s+or\s+|,\s+|\s*=\s*/i).filter((part) => part !== '');
  if (pieces.length < 2) return undefined;
  const read = pieces.map((part) => known(part)?.[0]);
  const [first, ...others] = read.filter((one) => one !== undefined);
  if (first === undefined || !(read.length <= 3 || read.every((one) => one !== undefined))) return undefined;
  const whole =
    [first, ...others].find(({ means, sign }) => means === first.means && sign !== undefined) ?? first;
  const different = others.filter(({ means }) => means !== whole.means);
  if (read[0] === undefined) return undefined;
  if (different.some(({ means }) => means === 'ground') && isJob(whole.means)) return [grounded(whole)];
  const all: Meanings = [{ ...whole, how: 'normalised' }, ...different];
  return mayBeUnused(all) ? all : doubted(all);
}

/** What stands in brackets says more of the same: whose ground, which sign, that no pin stands there. */
function refined(read: Meanings, inside: readonly string[]): Meanings {
  const [first, ...others] = read;
  if (first === undefined) return read;
  for (const held of inside) {
    const [more] = known(held) ?? described(held) ?? [];
    if (more === undefined) {
      const sign = piecesOf(held)
        .map(spelltSign)
        .find((each) => each !== undefined);
      if (sign && first.sign === undefined && meaningOf(first.means)[sign])
        return [{ ...first, sign }, ...others];
      continue;
    }
    if (isGround(first.means) && more.means === 'some-power')
      return [grounded(POWER_SWITCH, first), ...others];
    if (isGround(first.means) && isJob(more.means)) return [grounded(more, first), ...others];
    if (isJob(first.means) && isGround(more.means)) return [grounded(first), ...others];
    if (more.means === 'key' && first.means === 'no-connection') return [more, ...others];
    if (more.means === first.means && first.sign === undefined && more.sign) return [more, ...others];
    if (more.how !== 'twofold' && takesBack(first, more)) return asDoubt([first, more, ...others]);
  }
  return read;
}

/** "GND (power)" on a header that has no supply of that name means the switch. */
const POWER_SWITCH: Understood = { means: 'power-switch', how: 'normalised' };

function isGround(means: MeaningId): boolean {
  return means === 'ground' || means === 'audio-ground';
}

/** Whether a ground of its own can belong to it. */
function isJob(means: MeaningId): boolean {
  return meaningOf(means).minus?.startsWith('ground of ') === true;
}

function grounded(job: Understood, at: Understood = job): Understood {
  return { ...at, means: job.means, sign: 'minus' };
}

/** The part of a longer text that has to be known words. */
const COVERED = 0.4;
const SHORTEST_INSIDE = 3;
const VOLTS = /^\d+V$/;

/** Known words inside a longer text: "Hard disk activity LED, anode", "Reset button, ground side". */
function described(text: string): Meanings | undefined {
  const pieces = piecesOf(text);
  if (pieces.length < 2) return undefined;
  const found: Understood[] = [];
  let covered = 0;
  let sign: Sign | undefined = /\+$/.test(text) ? 'plus' : /-$/.test(text) ? 'minus' : undefined;
  for (let at = 0; at < pieces.length; ) {
    const spelt = spelltSign(pieces[at] ?? '');
    const run = spelt ? undefined : longestFrom(pieces, at);
    if (spelt) sign = spelt;
    if (run) found.push(run.meaning);
    covered += run?.letters ?? (spelt ? (pieces[at] ?? '').length : 0);
    at += run?.count ?? 1;
  }
  const rank = ({ means }: Understood) => (isGround(means) ? 2 : isOpen(means) ? 1 : 0);
  const [best] = found.toSorted((a, b) => rank(a) - rank(b));
  if (best === undefined || covered < COVERED * pieces.join('').length) return undefined;
  if (isJob(best.means) && found.some(({ means }) => isGround(means))) return [grounded(best)];
  const takes = (one: Understood) =>
    sign && meaningOf(one.means)[sign] !== undefined ? { ...one, sign } : one;
  const apart = wordByWord(text) ?? found.map(takes);
  const other = apart.filter((one) => apart.some((each) => differ(one, each)));
  if (other.length > 0) return asDoubt(other);
  return [takes(best)];
}

/** What each word says by itself, where all of them are known: "PLED+ HDLED+" has a sign for each. */
function wordByWord(text: string): Meanings | undefined {
  const read = text.split(' ').map((word) => known(word)?.[0]);
  return read.every((one) => one !== undefined) ? read : undefined;
}

function longestFrom(pieces: readonly string[], from: number) {
  for (let count = Math.min(5, pieces.length - from); count > 0; count--) {
    const some = pieces.slice(from, from + count);
    const key = keyOf(some);
    const entry = key.length < SHORTEST_INSIDE && !VOLTS.test(key) ? undefined : entryOf(key);
    if (entry === undefined) continue;
    const meaning: Understood = {
      means: entry.means,
      ...(entry.sign && { sign: entry.sign }),
      how: 'described',
    };
    return { meaning, count, letters: key.length };
  }
  return undefined;
}

/** Digits that a scanner takes for letters, inside of a word that is none: "RE5ET", "P0WER". */
function unscanned(key: string): string {
  const letters: Readonly<Record<string, string>> = { 0: 'O', 1: 'I', 5: 'S', 8: 'B' };
  return key.replace(/(?<=[A-Z])[0158](?=[A-Z])/g, (digit) => letters[digit] ?? digit);
}

/** A word of the list that is one letter apart, as a slip of the pen or of a scanner leaves it. */
function alike(text: string): Meanings | undefined {
  for (const { stem, sign } of signedWays(text)) {
    const key = keyOf(piecesOf(stem));
    const entry = entryOf(unscanned(key)) ?? entryLike(key) ?? entryLike(unscanned(key));
    const meant = sign ?? entry?.sign;
    if (entry && (sign === undefined || meaningOf(entry.means)[sign]))
      return [{ means: entry.means, ...(meant && { sign: meant }), how: 'alike' }];
  }
  return undefined;
}
