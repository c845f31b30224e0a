import { byIdentity } from '../base/by-identity';
import type { Fault, Way } from './faults/fault';
import { OBSERVATIONS, type ObservationId } from './observations/observations';
import { courseOf, type EndId } from './start-chain/course';
import { joined } from './start-chain/joined';
import { type Machine, SOUND } from './start-chain/machine';
import { type LikelyManner, MANNERS } from './start-chain/manner';
import { ALWAYS_SHOWN, reachOf } from './start-chain/reach';
import { SIGNS_OF_END, type Signs } from './start-chain/signs-of-end';

/** One way in which a fault may go, with what would then be noticed. */
export interface Outcome {
  /** Among the outcomes of the fault; they add up to 1. */
  readonly chance: number;
  readonly end: EndId;
  readonly machine: Machine;
  /** The machine with each fault alone: of two at once, two. */
  readonly parts: readonly Machine[];
  /** The boards that end so, by their shares; these do not add up to 1. */
  readonly manners: readonly LikelyManner[];
  /** The chance of a yes to each observation, in the order of `OBSERVATIONS`. */
  readonly yes: Float64Array;
}

/** The chance of a yes to something that has nothing to do with the fault. Common practice, no source. */
const UNRELATED = 0.005;

const PLACE: ReadonlyMap<ObservationId, number> = new Map(OBSERVATIONS.map(({ id }, at) => [id, at]));

/** The place of an observation among `OBSERVATIONS`. */
export function placeOf(id: ObservationId): number {
  return PLACE.get(id) ?? -1;
}

/** What a fault would show, over its ways and over what boards do differently. Outcomes alike are one. */
export function predict({ ways }: Pick<Fault, 'ways'>): readonly Outcome[] {
  return outcomesOfWays(ways);
}

/** Many wrong seats have the very same ways. */
const outcomesOfWays = byIdentity((ways: readonly Way[]): readonly Outcome[] => {
  const all = sumOfShares(ways);
  return ways.flatMap((each) => outcomesOf([each], each.share / all));
});

/** What two faults at once would show: each way of the one with each of the other. */
export function predictBoth(one: Pick<Fault, 'ways'>, other: Pick<Fault, 'ways'>): readonly Outcome[] {
  return outcomesOfBoth([one.ways, other.ways]);
}

/** Kept, so that pairs are not worked out again where a cause is weighed otherwise. */
const outcomesOfBoth = byIdentity(
  ([one, other]: readonly [readonly Way[], readonly Way[]]): readonly Outcome[] => {
    const all = sumOfShares(one) * sumOfShares(other);
    return one.flatMap((first) =>
      other.flatMap((second) => outcomesOf([first, second], (first.share * second.share) / all)),
    );
  },
  (both) => both,
);

function sumOfShares(ways: readonly Way[]): number {
  return ways.reduce((sum, { share }) => sum + share, 0);
}

/** What ways of faults show together; each of them sets in where a start gets as far as with it alone. */
function outcomesOf(ways: readonly Way[], share: number): readonly Outcome[] {
  const parts = ways.map(({ machine }): Machine => ({ ...SOUND, ...machine }));
  const machine = joined(parts);
  const found = new Map<string, { chance: number; end: EndId; also: Signs[]; manners: LikelyManner[] }>();
  for (const likely of MANNERS) {
    const { share: chance, manner } = likely;
    const { end, steps, byItself } = courseOf(machine, manner);
    const shown = parts.map(
      (part) => parts.length === 1 || reachOf(end) >= reachOf(courseOf(part, manner).end),
    );
    const key = `${end}/${byItself}/${shown.join()}`;
    const known = found.get(key);
    if (known) {
      known.chance += chance * share;
      known.manners.push(likely);
      continue;
    }
    const also = [
      // Standby is up in every start that gets that far, and whoever looks sees its light.
      ...(steps.some(({ id }) => id === 'standby') ? [STANDING] : []),
      ...(byItself ? [ALONE] : []),
      ...ways.map(({ signs }, at) => (shown[at] ? signs : shownAnyhow(signs))),
    ];
    found.set(key, { chance: chance * share, end, also, manners: [likely] });
  }
  return [...found.values()].map(({ chance, end, also, manners }) => ({
    chance,
    end,
    machine,
    parts,
    manners,
    yes: chancesOfYes(also.reduce(together, SIGNS_OF_END[end])),
  }));
}

const STANDING: Signs = { 'standby-light': 0.85 };
const ALONE: Signs = { 'starts-on-mains': 0.7, 'starts-by-itself': 0.4 };

/** What shows of a fault when another keeps the machine from getting to where the rest of it would. */
function shownAnyhow(signs: Signs): Signs {
  return Object.fromEntries(
    OBSERVATIONS.flatMap(({ id, moment }) => {
      const sign = signs[id];
      return sign !== undefined && ALWAYS_SHOWN.has(moment) ? [[id, sign]] : [];
    }),
  );
}

/** Two grounds for the same sign: it stays away only where both let it. */
function together(first: Signs, second: Signs): Signs {
  const both: Partial<Record<ObservationId, number>> = { ...first };
  for (const id of namesOf(second)) both[id] = 1 - (1 - (both[id] ?? 0)) * (1 - (second[id] ?? 0));
  return both;
}

function chancesOfYes(signs: Signs): Float64Array {
  const chances = new Float64Array(OBSERVATIONS.length).fill(UNRELATED);
  for (const id of namesOf(signs)) chances[placeOf(id)] = signs[id] ?? UNRELATED;
  return chances;
}

function namesOf(signs: Signs): readonly ObservationId[] {
  return Object.keys(signs) as ObservationId[];
}
