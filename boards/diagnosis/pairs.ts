import { finished } from '../base/finished';
import type { Dictionary, Hypothesis } from './dictionary';
import type { Fault } from './faults/fault';
import { predictBoth } from './predict';

/** Of a hundred machines with one fault so many have another beside it. Common practice, no source. */
const SECOND_SHARE = 0.06;

/** The heaviest single hypotheses that are paired: their pairs bear nearly all the weight of all pairs. */
const PAIRED_MOST = 100;

/** Pairs that are predicted between two reports of progress. */
const PIECE = 25;

export interface PairLimits {
  /** Single hypotheses that are paired with each other, the heaviest first. */
  readonly singles: number;
}

/**
 * A dictionary that also knows two faults at once, of which one may keep the other from showing until it is
 * cured. Handed out in pieces: the share of the work that is done, at last the dictionary.
 */
export function* pairsInSteps(
  dictionary: Dictionary,
  { singles }: PairLimits = { singles: PAIRED_MOST },
): Generator<number, Dictionary> {
  const { faults, hypotheses } = dictionary;
  const all = faults.reduce((sum, { weight }) => sum + weight, 0);
  const single = hypotheses.filter((each) => each.faults.length === 1);
  const heaviest = [...single].sort((a, b) => b.weight - a.weight).slice(0, singles);
  const couples = heaviest.flatMap((one, at) =>
    heaviest.slice(at + 1).flatMap((other) => (canMeet(one, other) ? [[one, other] as const] : [])),
  );
  const pairs: Hypothesis[] = [];
  for (const [at, [one, other]] of couples.entries()) {
    if (at % PIECE === 0) yield at / couples.length;
    const [first, second] = [representative(one), representative(other)];
    pairs.push({
      faults: [first, second],
      outcomes: predictBoth(first, second),
      weight: (SECOND_SHARE * one.weight * other.weight) / all,
      members: [],
    });
  }
  return { ...dictionary, hypotheses: [...single, ...pairs] };
}

/** Two faults of one lead, or two of one cause, are one for who cures them. */
function canMeet(one: Hypothesis, other: Hypothesis): boolean {
  const [first, second] = [representative(one), representative(other)];
  return first.cause !== second.cause && (first.lead === undefined || first.lead !== second.lead);
}

function representative({ faults: [first] }: Hypothesis): Fault {
  if (first === undefined) throw new Error('A hypothesis stands for at least one fault');
  return first;
}

/** The same without being watched. */
export function withPairs(dictionary: Dictionary, limits?: PairLimits): Dictionary {
  return finished(pairsInSteps(dictionary, limits));
}
