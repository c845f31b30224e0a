import { LIMITS } from '../../../boards/document/limits';
import type { Dice } from '../../boards/dice';
import { ENGINE_NAMES, HOSTILE_TEXTS } from '../hostile-texts';

type Node = Record<string, unknown> | unknown[];

/** One value of a document: what it stands in, and under which key. */
interface Spot {
  readonly inside: Node;
  readonly key: string;
}

const VALUES: readonly unknown[] = [null, true, false, '', 'x', 'panel', [], {}, [[[]]], [null], { a: 1 }];

/** Numbers at and past the limits that schemas have, and where sums and products lose themselves. */
const NUMBERS: readonly number[] = [
  0,
  -0,
  1,
  -1,
  0.5,
  1e-300,
  5e-324,
  1e300,
  Number.MAX_VALUE,
  Number.MAX_SAFE_INTEGER,
  Number.MIN_SAFE_INTEGER,
  2 ** 31,
  -(2 ** 31),
  2 ** 32,
  90,
  180,
  270,
  360,
  ...[LIMITS.gridSide, LIMITS.photoSidePx, 1_000, 2_000, 50, 500, 100].flatMap((limit) => [
    limit - 1,
    limit,
    limit + 1,
    -limit,
  ]),
];

/** What no JavaScript value comes out as: put into the text in place of a mark. */
const RAW: readonly string[] = [
  '1e999',
  '-1e999',
  '1E+400',
  '-0',
  '0x10',
  '01',
  '1.',
  '.5',
  '+1',
  'NaN',
  'Infinity',
  'undefined',
  '9007199254740993',
  '0.1e-400',
  `1${'0'.repeat(400)}`,
  `${'['.repeat(60)}${']'.repeat(60)}`,
  `${'['.repeat(70)}${']'.repeat(70)}`,
  `${'{"a":'.repeat(70)}1${'}'.repeat(70)}`,
  `${'['.repeat(20_000)}`,
  '{"__proto__":{"seats":[]},"__proto__":1}',
  '{"id":"a","id":"b"}',
  '"\\ud800"',
  '"\\u0000"',
  "'single'",
  '// comment',
];
/** Stands in the tree where a raw piece comes into the text. */
const RAW_MARK = '#raw#';

/**
 * The text of a document with one to three of its values bent: left out, renamed, moved, doubled, exchanged
 * with another, or set to what the schema of no field or of another field lets in.
 *
 * @param text of a document as it was saved
 * @param other another document, of any kind, from which whole pieces are taken
 */
export function bentText(text: string, other: string, dice: Dice): string {
  const root: unknown = JSON.parse(text);
  let raw: string | undefined;
  for (let times = dice.oneIn(3) ? 2 + dice.below(2) : 1; times > 0; times--) {
    const spots = spotsIn(root);
    const spot = dice.pick(spots);
    if (spot === undefined) break;
    if (dice.oneIn(12)) {
      raw = dice.pick(RAW);
      put(spot, RAW_MARK);
    } else bend(spot, spots, other, dice);
  }
  const bent = JSON.stringify(root) ?? '';
  return raw === undefined ? bent : bent.replace(JSON.stringify(RAW_MARK), raw);
}

function bend(spot: Spot, spots: readonly Spot[], other: string, dice: Dice): void {
  const { inside, key } = spot;
  const value = get(spot);
  switch (dice.below(10)) {
    case 0:
      if (Array.isArray(inside)) inside.splice(Number(key), 1);
      else delete inside[key];
      return;
    case 1:
      if (Array.isArray(inside)) inside.splice(Number(key), 0, ...copies(value, dice));
      else rename(inside, key, dice);
      return;
    case 2: {
      const partner = dice.pick(spots.filter((each) => typeof get(each) === typeof value)) ?? spot;
      const theirs = structuredClone(get(partner));
      put(partner, structuredClone(value));
      put(spot, theirs);
      return;
    }
    case 3: {
      // A name of something else that is there: references then point at what they should not.
      const partner = dice.pick(spots.filter((each) => typeof get(each) === typeof value)) ?? spot;
      put(spot, structuredClone(get(partner)));
      return;
    }
    case 4: {
      const foreign = dice.pick(spotsIn(JSON.parse(other)));
      if (foreign !== undefined) put(spot, get(foreign));
      return;
    }
    case 5:
      put(spot, dice.oneIn(2) ? [value] : { [key]: value });
      return;
    case 6:
      put(spot, dice.pick(HOSTILE_TEXTS));
      return;
    case 7:
      put(spot, typeof value === 'number' || dice.oneIn(3) ? dice.pick(NUMBERS) : dice.pick(ENGINE_NAMES));
      return;
    case 8:
      if (Array.isArray(value) && value.length > 0) put(spot, grown(value, dice));
      else
        put(spot, typeof value === 'number' ? value * (dice.pick([-1, 1e-9, 1e9, 0.5, 2, 10]) ?? 1) : value);
      return;
    default:
      // A copy: what is bent next may stand in it, and the next file begins with the same values.
      put(spot, structuredClone(dice.pick(VALUES)));
  }
}

function copies(value: unknown, dice: Dice): readonly unknown[] {
  return Array.from({ length: 1 + dice.below(2) }, () => structuredClone(value));
}

function grown(value: readonly unknown[], dice: Dice): readonly unknown[] {
  const many = dice.pick([2, 9, 64, 65, 513]) ?? 2;
  return Array.from({ length: many }, (_, at) => value[at % value.length]);
}

/** A key said otherwise: misspelt, in capitals, or one of the engine's. As an own key, also "__proto__". */
function rename(inside: Record<string, unknown>, key: string, dice: Dice): void {
  const name = dice.oneIn(2) ? dice.pick(ENGINE_NAMES) : dice.pick([`${key}x`, key.toUpperCase(), '', ' ']);
  const value = inside[key];
  if (dice.oneIn(2)) delete inside[key];
  Object.defineProperty(inside, name ?? '', { value, enumerable: true, configurable: true, writable: true });
}

function spotsIn(root: unknown): readonly Spot[] {
  const spots: Spot[] = [];
  const open: unknown[] = [root];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    if (typeof at !== 'object' || at === null) continue;
    for (const key of Object.keys(at)) {
      const spot = { inside: at as Node, key };
      spots.push(spot);
      open.push(get(spot));
    }
  }
  return spots;
}

function get({ inside, key }: Spot): unknown {
  return Object.getOwnPropertyDescriptor(inside, key)?.value;
}

function put({ inside, key }: Spot, value: unknown): void {
  if (!Object.hasOwn(inside, key) && Array.isArray(inside)) return;
  Object.defineProperty(inside, key, { value, enumerable: true, configurable: true, writable: true });
}
