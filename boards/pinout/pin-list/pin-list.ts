import { ok, type Result, refuse } from '../../base/result';
import type { Grid } from '../../document/grid';
import { gridIndex } from '../../document/numbering';
import { belongings } from './belonging';
import { contradictions } from './contradictions';
import { HEADING_WORDS } from './header-rules';
import { layoutOf } from './layout';
import type { ListProblem } from './list-problem';
import { matchWord } from './match-word';
import { meaningOf } from './meanings';
import type { HowRead, ListRefusal, OtherReading, PinListReading, ReadPin } from './reading';
import type { Entry } from './row';
import { settle } from './settle';
import { isGroundOf, type Settling } from './settling';
import { withSupplyOfPort3 } from './supply-of-port-3';
import { asDoubt, takesBack } from './two-meanings';
import type { How, Meanings, Understood } from './understood';

/** What a list may hold; each is tested at the limit and one past it. */
export const PIN_LIST_LIMITS = {
  characters: 1_000_000,
  /** The largest connector has 64 × 64 positions; a list has a few lines more. */
  lines: 5_000,
} as const;

/** How sure a reading is, by the way it was come by. Common practice, no source: no count stands behind it. */
const CONFIDENCE: Readonly<Record<HowRead, number>> = {
  chosen: 1,
  exact: 0.95,
  normalised: 0.9,
  neighbours: 0.85,
  described: 0.75,
  guessed: 0.5,
  'two-meanings': 0,
  'no-signal': 0.5,
  'not-understood': 0,
};

/** What a list is for: the connector's positions, and what it is called, which may tell its job. */
export interface ListTarget {
  readonly grid: Grid;
  readonly title?: string;
}

/** Why a text is too much to be read, without reading it; undefined where it is not. */
export function tooMuch(text: string): ListRefusal | undefined {
  const { characters } = PIN_LIST_LIMITS;
  if (text.length > characters) return { code: 'too-long', length: text.length, limit: characters };
  const lines = text.trimEnd().split(/\r\n|\r|\n/).length;
  return lines > PIN_LIST_LIMITS.lines
    ? { code: 'too-many-lines', lines, limit: PIN_LIST_LIMITS.lines }
    : undefined;
}

/**
 * Reads a list of pins copied from a manual or a page. Every pin keeps its word as it is written; what was
 * made of it is said beside it. Never throws, whatever the text.
 */
export function readPinList(text: string, target: ListTarget): Result<PinListReading, ListRefusal> {
  const problem = tooMuch(text);
  if (problem) return refuse(problem);
  if (text.trim() === '') return refuse({ code: 'nothing-to-read' });
  const layout = layoutOf(text, target.grid);
  const { cellOf, positions } = gridIndex(target.grid);
  const pins = gathered(layout.entries);
  const nothing: ListRefusal = {
    code: 'nothing-readable',
    firstLine: text.trim().split(/[\r\n]/)[0] ?? '',
  };
  if (pins.length === 0) return refuse(nothing);
  const here = pins.filter(({ label }) => cellOf(label) !== undefined);
  const known = positions.map(({ label }) => label);
  if (here.length === 0)
    return refuse({ code: 'no-label-fits', labels: pins.map(({ label }) => label), known });
  const read = understood(here, target, layout.headings);
  if (layout.counted && read.every(({ how }) => how === 'not-understood')) return refuse(nothing);
  const order = new Map(known.map((label, at) => [label, at]));
  const inOrder = read.toSorted((a, b) => (order.get(a.label) ?? 0) - (order.get(b.label) ?? 0));
  const beyond = pins.filter((pin) => !here.includes(pin)).map(({ label }) => label);
  const told = new Set(here.map(({ label }) => label));
  const gaps = known.filter((label) => !told.has(label));
  const problems: readonly ListProblem[] = [
    ...(beyond.length > 0 ? [{ code: 'beyond' as const, labels: beyond, positions: known.length }] : []),
    ...here.flatMap(twice),
    ...contradictions(inOrder),
    ...(gaps.length > 0 ? [{ code: 'gaps' as const, labels: gaps }] : []),
    ...(layout.counted ? [{ code: 'counted' as const, first: known[0] ?? '1' }] : []),
    ...(layout.leftOver.length > 0 ? [{ code: 'left-over' as const, lines: layout.leftOver }] : []),
  ];
  return ok({ pins: inOrder, problems });
}

/** All that a list says of one label, in the order of its lines. */
interface Gathered {
  readonly label: string;
  readonly told: readonly { readonly word: string; readonly more: string; readonly line: number }[];
}

function gathered(entries: readonly Entry[]): readonly Gathered[] {
  const pins = new Map<string, { word: string; more: string; line: number }[]>();
  for (const { labels, word, more, line } of entries) {
    for (const label of labels) {
      const told = pins.get(label) ?? [];
      pins.set(label, told);
      told.push({ word, more, line });
    }
  }
  return [...pins].map(([label, told]) => ({ label, told }));
}

/** A pin that stands in the list twice with different words. The first of them is taken. */
function twice({ label, told }: Gathered): readonly ListProblem[] {
  if (told.length < 2) return [];
  const words = [...new Set(told.map(({ word }) => word))];
  return [{ code: 'pin-twice', label, words, lines: told.map(({ line }) => line) }];
}

function understood(
  pins: readonly Gathered[],
  target: ListTarget,
  headings: readonly string[],
): readonly ReadPin[] {
  const { cellOf } = gridIndex(target.grid);
  const memo = new Map<string, Meanings>();
  const meaningsOf = (word: string) => {
    const read = memo.get(word) ?? matchWord(word);
    memo.set(word, read);
    return read;
  };
  const heard = pins.map(({ label, told }) => {
    const read = told.map(({ word, more }) => {
      // Nothing beside a label is no word for a gap: what belongs there may stand where it was not looked for.
      return explained(meaningsOf(word), more === '' ? [] : meaningsOf(more));
    });
    const at = Math.max(
      0,
      read.findIndex((meanings) => meanings.length > 0),
    );
    return { label, told, at, meanings: read[at] ?? [], read };
  });
  const words = withSupplyOfPort3(heard, ({ told, at }) => told[at]?.word ?? '');
  const header = [...headings.slice(-3), target.title ?? ''].join('\n');
  const jobs = HEADING_WORDS.filter(({ pattern }) => pattern.test(header)).map(({ job }) => job);
  const settled = settle(
    words.map(({ label, meanings }) => ({
      label,
      cell: cellOf(label),
      meant: meanings.find(({ how }) => how !== 'twofold'),
    })),
    jobs,
  );
  const belonging = belongings(settled);
  return settled.map((pin, at): ReadPin => {
    const word = words[at];
    const told = word?.told ?? [];
    const taken = told[word?.at ?? 0];
    const meanings = word?.meanings ?? [];
    const twofold = meanings.some(({ how }) => how === 'twofold');
    const how = twofold ? 'two-meanings' : howRead(pin);
    return {
      label: pin.label,
      lines: told.map(({ line }) => line),
      word: taken?.word || taken?.more || '',
      how,
      confidence: CONFIDENCE[how],
      ...said(pin),
      ...belonging.get(pin),
      or: [
        ...alternatives(pin, twofold ? meanings : meanings.slice(1)),
        ...otherLines(pin, told, word?.read ?? [], taken?.word),
      ],
    };
  });
}

/** What other lines say of the pin with other words, each with its word, understood or not. */
function otherLines(
  pin: Settling,
  told: Gathered['told'],
  read: readonly Meanings[],
  taken: string | undefined,
): readonly OtherReading[] {
  return told.flatMap(({ word }, at) => {
    if (word === taken || told.findIndex((other) => other.word === word) !== at) return [];
    const meanings = read[at] ?? [];
    const twofold = meanings.some(({ how }) => how === 'twofold');
    const others = alternatives(pin, twofold ? meanings : meanings.slice(0, 1));
    if (others.length > 0) return others.map((other) => ({ ...other, name: word }));
    return meanings.length === 0 && word !== '' ? [{ signal: 'unknown' as const, name: word }] : [];
  });
}

function howRead({ meant, said: told, by }: Settling): HowRead {
  if (meant === undefined || told === undefined) return 'not-understood';
  if (meant.means === 'elsewhere') return 'no-signal';
  if (by === 'guess') return 'guessed';
  const own: Readonly<Record<How, HowRead>> = {
    exact: 'exact',
    normalised: 'normalised',
    described: 'described',
    alike: 'guessed',
    twofold: 'two-meanings',
  };
  const word = own[meant.how];
  return by === 'neighbours' && CONFIDENCE[word] > CONFIDENCE.neighbours ? 'neighbours' : word;
}

function said({ said: told, meant }: Settling): Pick<ReadPin, 'missing' | 'signal'> {
  if (told === undefined || meant?.means === 'elsewhere') return {};
  if (told === 'no-pin') return { missing: true };
  return { signal: isGroundOf(told) ? 'ground' : told };
}

/** What further meanings of a word say besides. */
function alternatives({ said: told }: Settling, others: Meanings): readonly OtherReading[] {
  const readings = others.flatMap((one): OtherReading[] => {
    const also = meaningOf(one.means)[one.sign ?? 'bare'];
    if (also === undefined || also === told || one.means === 'elsewhere') return [];
    if (also === 'no-pin') return [{ signal: 'no-connection', missing: true }];
    const signal = isGroundOf(also) ? ('ground' as const) : also;
    const ground = told === 'ground' || (told !== undefined && isGroundOf(told));
    return ground && signal === 'ground' ? [] : [{ signal }];
  });
  return readings.filter(
    (one, at) =>
      readings.findIndex(({ signal, missing }) => signal === one.signal && missing === one.missing) === at,
  );
}

/** What the word says, else its explanation; both as a doubt where the explanation takes the word back. */
function explained(own: Meanings, more: Meanings): Meanings {
  const [word] = own;
  const [further] = more;
  if (word === undefined) return more.map(asDescribed);
  const doubt = further && ![word, further].some(({ how }) => how === 'twofold') && takesBack(word, further);
  return doubt ? asDoubt([word, further]) : own;
}

function asDescribed(one: Understood): Understood {
  return one.how === 'twofold' ? one : { ...one, how: 'described' };
}
