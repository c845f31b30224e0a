import { byIdentity } from '../base/by-identity';
import type { Fault, Way } from './faults/fault';
import { OBSERVATIONS, type ObservationId } from './observations/observations';
import { courseOf, type EndId } from './start-chain/course';
import { type Machine, SOUND } from './start-chain/machine';
import { type LikelyManner, MANNERS } from './start-chain/manner';
import { SIGNS_OF_END, type Signs } from './start-chain/signs-of-end';

/** One way in which a fault may go, with what would then be noticed. */
export interface Outcome {
  /** Among the outcomes of the fault; they add up to 1. */
  readonly chance: number;
  readonly end: EndId;
  readonly machine: Machine;
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
  const all = ways.reduce((sum, { share }) => sum + share, 0);
  return ways.flatMap((each) => outcomesOf(each, each.share / all));
});

function outcomesOf({ machine, signs }: Way, share: number): readonly Outcome[] {
  const whole: Machine = { ...SOUND, ...machine };
  const found = new Map<string, { chance: number; end: EndId; also: Signs; manners: LikelyManner[] }>();
  for (const likely of MANNERS) {
    const { share: chance, manner } = likely;
    const { end, steps, byItself } = courseOf(whole, manner);
    // Standby is up in every start that gets that far, and whoever looks sees its light.
    const standing: Signs = steps.some(({ id }) => id === 'standby') ? { 'standby-light': 0.85 } : {};
    const alone: Signs = byItself ? { 'starts-on-mains': 0.7, 'starts-by-itself': 0.4 } : {};
    const key = `${end}/${byItself}`;
    const known = found.get(key);
    if (known) {
      known.chance += chance * share;
      known.manners.push(likely);
    } else
      found.set(key, { chance: chance * share, end, also: together(standing, alone), manners: [likely] });
  }
  return [...found.values()].map(({ chance, end, also, manners }) => ({
    chance,
    end,
    machine: whole,
    manners,
    yes: chancesOfYes(together(together(SIGNS_OF_END[end], also), signs)),
  }));
}

/** Two grounds for the same sign: it stays away only where both let it. */
function together(first: Signs, second: Signs): Signs {
  const joined: Partial<Record<ObservationId, number>> = { ...first };
  for (const { id } of OBSERVATIONS) {
    const more = second[id];
    if (more !== undefined) joined[id] = 1 - (1 - (joined[id] ?? 0)) * (1 - more);
  }
  return joined;
}

function chancesOfYes(signs: Signs): Float64Array {
  return Float64Array.from(OBSERVATIONS, ({ id }) => signs[id] ?? UNRELATED);
}
