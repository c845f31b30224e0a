import { keyOf, piecesOf } from './clean';
import { expand } from './expand';
import type { MeaningId } from './meanings';
import { WORD_ROWS } from './words/index';

/** What the word list says of one word. */
export interface WordEntry {
  readonly means: MeaningId;
  readonly sign?: 'plus' | 'minus';
  /** The ways it is printed in the list, in capitals. */
  readonly written: ReadonlySet<string>;
}

/** Words that are a letter apart are looked for only where chance would hardly make them so. */
const ALIKE_FROM = 6;

interface WordIndex {
  readonly byKey: ReadonlyMap<string, WordEntry>;
  /** Every key of the list with one letter left out. */
  readonly shortened: ReadonlyMap<string, ReadonlySet<string>>;
}

function makeIndex(): WordIndex {
  const byKey = new Map<string, WordEntry & { readonly written: Set<string> }>();
  for (const { means, sign, words } of WORD_ROWS) {
    for (const word of words.flatMap(expand)) {
      const key = keyOf(piecesOf(word));
      const known = byKey.get(key);
      if (known) known.written.add(word);
      else byKey.set(key, { means, ...(sign && { sign }), written: new Set([word]) });
    }
  }
  const shortened = new Map<string, Set<string>>();
  for (const key of byKey.keys()) {
    if (key.length < ALIKE_FROM) continue;
    for (const short of [key, ...withoutOne(key)])
      shortened.set(short, (shortened.get(short) ?? new Set()).add(key));
  }
  return { byKey, shortened };
}

const index = makeIndex();

/** How many different words the list knows, spelling aside. */
export const WORD_COUNT = index.byKey.size;

export function entryOf(key: string): WordEntry | undefined {
  return index.byKey.get(key);
}

/** The entry that is at most a letter away; undefined where there is none or where several mean different things. */
export function entryLike(key: string): WordEntry | undefined {
  if (key.length < ALIKE_FROM) return undefined;
  const keys = new Set([key, ...withoutOne(key)].flatMap((short) => [...(index.shortened.get(short) ?? [])]));
  const entries = [...keys].flatMap((near) => index.byKey.get(near) ?? []);
  const [first] = entries;
  return entries.every(({ means, sign }) => means === first?.means && sign === first.sign)
    ? first
    : undefined;
}

function withoutOne(key: string): readonly string[] {
  return Array.from(key, (_, at) => key.slice(0, at) + key.slice(at + 1));
}
