import { COST_LEVELS, type Cost, type CostLevel } from './cost';
import type { Instance } from './instance';

/** Below 2^53, so that sums of packed costs stay whole. */
const CAPACITY = 2 ** 52;

/**
 * An instance as flat numbers, for the search: costs of several levels share one number wherever their
 * sums over all slots cannot run into each other.
 */
export interface Packed {
  readonly slotCount: number;
  /** The first choice of each slot, and the number of all choices at the end. */
  readonly firstOf: Int32Array;
  readonly slotOf: Int32Array;
  /** How many numbers make up a cost. Compared from the first on. */
  readonly width: number;
  /** `width` numbers for each choice. */
  readonly costs: Float64Array;
  /** The choices that clash with each, in ascending order. */
  readonly clashesOf: readonly Int32Array[];
  /** For each slot the name of those it may change places with, as a number; -1 where there are none. */
  readonly likeOf: Int32Array;
  /** The cost behind a packed one. */
  readonly unpack: (cost: ArrayLike<number>) => Cost;
}

/** Packs an instance. Throws a RangeError on costs that are not whole numbers from 0. */
export function packed({ slots, clashes }: Instance): Packed {
  const firstOf = new Int32Array(slots.length + 1);
  slots.forEach(({ choices }, slot) => {
    firstOf[slot + 1] = (firstOf[slot] ?? 0) + choices.length;
  });
  const choiceCount = firstOf[slots.length] ?? 0;
  const slotOf = new Int32Array(choiceCount);
  slots.forEach((_, slot) => {
    slotOf.fill(slot, firstOf[slot], firstOf[slot + 1]);
  });
  const { width, pack, unpack } = packing(slots.map(({ choices }) => choices.map(({ cost }) => cost)));
  const costs = new Float64Array(choiceCount * width);
  slots.forEach(({ choices }, slot) => {
    choices.forEach(({ cost }, choice) => {
      costs.set(pack(cost), ((firstOf[slot] ?? 0) + choice) * width);
    });
  });
  const lists: number[][] = Array.from({ length: choiceCount }, () => []);
  for (const [[oneSlot, oneChoice], [otherSlot, otherChoice]] of clashes) {
    const one = (firstOf[oneSlot] ?? 0) + oneChoice;
    const other = (firstOf[otherSlot] ?? 0) + otherChoice;
    lists[one]?.push(other);
    lists[other]?.push(one);
  }
  return {
    slotCount: slots.length,
    firstOf,
    slotOf,
    width,
    costs,
    clashesOf: lists.map((list) => Int32Array.from(list).sort()),
    likeOf: likeNumbers(slots.map(({ like }) => like)),
    unpack,
  };
}

function likeNumbers(names: readonly (string | undefined)[]): Int32Array {
  const counts = new Map<string, number>();
  for (const name of names) if (name !== undefined) counts.set(name, (counts.get(name) ?? 0) + 1);
  const shared = [...counts].filter(([, count]) => count > 1).map(([name]) => name);
  return Int32Array.from(names, (name) => (name === undefined ? -1 : shared.indexOf(name)));
}

interface Digit {
  readonly level: CostLevel;
  /** One more than the greatest sum that the level can reach. */
  readonly radix: number;
}

/** Lays the levels into as few numbers as hold them. */
function packing(costs: readonly (readonly Cost[])[]) {
  const groups: Digit[][] = [];
  let room = 0;
  for (const level of COST_LEVELS) {
    const radix =
      1 +
      costs.reduce((sum, of) => sum + of.reduce((most, cost) => Math.max(most, whole(cost[level])), 0), 0);
    if (radix > CAPACITY) throw new RangeError(`Costs too great to be added up: ${level}`);
    if (radix > room) {
      groups.push([]);
      room = CAPACITY;
    }
    groups.at(-1)?.push({ level, radix });
    room = Math.floor(room / radix);
  }
  const pack = (cost: Cost) =>
    groups.map((digits) => digits.reduce((sum, { level, radix }) => sum * radix + cost[level], 0));
  const unpack = (numbers: ArrayLike<number>) =>
    Object.fromEntries(groups.flatMap((digits, at) => digitsOf(numbers[at] ?? 0, digits))) as Cost;
  return { width: groups.length, pack, unpack };
}

function digitsOf(number: number, digits: readonly Digit[]): readonly (readonly [CostLevel, number])[] {
  let rest = number;
  return digits.toReversed().map(({ level, radix }) => {
    const digit = rest % radix;
    rest = (rest - digit) / radix;
    return [level, digit];
  });
}

function whole(value: number): number {
  if (!Number.isSafeInteger(value) || value < 0) throw new RangeError(`Not a whole cost: ${value}`);
  return value;
}
