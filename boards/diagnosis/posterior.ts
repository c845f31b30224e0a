import { byIdentity } from '../base/by-identity';
import { beliefFrom, mayBeMisread, observed } from '../inference/belief';
import { chancesOf } from '../inference/log-space';
import type { Dictionary, Hypothesis } from './dictionary';
import type { CauseId } from './faults/causes';
import type { Fault } from './faults/fault';
import type { ObservationId } from './observations/observations';
import { type Outcome, placeOf } from './predict';
import { chanceIfNone, chanceOf, type Tried } from './trials/trial';

/** What was looked for. What is in neither list has not been looked at yet and tells nothing. */
export interface Evidence {
  readonly seen: readonly ObservationId[];
  readonly notSeen: readonly ObservationId[];
  /** What was tried, and what came of it. */
  readonly tried?: readonly Tried[];
}

interface LikelyFault {
  readonly fault: Fault;
  readonly chance: number;
}

/** A cause with the faults behind it, the likeliest first. */
interface Suspect {
  readonly cause: CauseId;
  readonly chance: number;
  readonly faults: readonly LikelyFault[];
}

/** What is believed. The chances of the suspects and of none of them add up to 1. */
export interface Suspicion {
  /** The likeliest first. */
  readonly suspects: readonly Suspect[];
  readonly noneOfThese: number;
  /** Said to be seen and not to be seen. */
  readonly contradicted: readonly ObservationId[];
}

/** How often a person sees, hears or reads wrongly, and how often yes is said then. Common practice, no source. */
const MISREAD = 0.05;
const YES_IN_GENERAL = 0.2;
/** How much of all trouble is nothing that we know, and how often anything would show in it. */
const NONE_SHARE = 0.03;
export const YES_IF_NONE = 0.1;

/** How matters stand after some evidence. */
export interface Standing {
  /** Of each hypothesis of the dictionary, and last of none of them. */
  readonly chances: Float64Array;
  /** Of each outcome of each hypothesis, if that is the case; each list adds up to 1. */
  readonly shares: readonly (readonly number[])[];
}

/** How matters stand: the same evidence is asked for suspects, looks and trials. */
export const standingOf = byIdentity(
  ({ dictionary: { hypotheses }, evidence }: Asked): Standing => {
    const known = onceEach(evidence);
    const all = hypotheses.reduce((sum, { weight }) => sum + weight, 0) || 1;
    const before = beliefFrom([
      ...hypotheses.map(({ weight }) => weight),
      (all * NONE_SHARE) / (1 - NONE_SHARE),
    ]);
    const joint = hypotheses.map((each) => each.outcomes.map((outcome) => jointChance(each, outcome, known)));
    const likelihoods = joint.map((chances) => chances.reduce((sum, each) => sum + each, 0));
    const ifNone =
      YES_IF_NONE ** known.seen.size *
      (1 - YES_IF_NONE) ** known.notSeen.size *
      known.tried.reduce((product, each) => product * chanceIfNone(each), 1);
    return {
      chances: chancesOf(observed(before, [...likelihoods, ifNone])),
      shares: joint.map((chances, at) => {
        const sum = likelihoods[at] || 1;
        return chances.map((each) => each / sum);
      }),
    };
  },
  ({ dictionary, evidence }) => [dictionary, evidence],
);

interface Asked {
  readonly dictionary: Dictionary;
  readonly evidence: Evidence;
}

/** The suspects after what was noticed and tried. An observation named twice counts once. */
export function suspicionOf(dictionary: Dictionary, evidence: Evidence): Suspicion {
  const { faults, hypotheses } = dictionary;
  const { chances } = standingOf({ dictionary, evidence });
  const byCause = new Map<CauseId, { chance: number; faults: LikelyFault[] }>();
  hypotheses.forEach(({ weight, members }, at) => {
    for (const member of members) {
      const fault = faults[member];
      if (fault === undefined) continue;
      const chance = ((chances[at] ?? 0) * fault.weight) / weight;
      const suspect = byCause.get(fault.cause) ?? { chance: 0, faults: [] };
      suspect.chance += chance;
      suspect.faults.push({ fault, chance });
      byCause.set(fault.cause, suspect);
    }
  });
  const likelierFirst = (a: { chance: number }, b: { chance: number }) => b.chance - a.chance;
  const { seen, notSeen } = onceEach(evidence);
  return {
    suspects: [...byCause]
      .map(([cause, suspect]) => ({
        cause,
        chance: suspect.chance,
        faults: suspect.faults.sort(likelierFirst),
      }))
      .sort(likelierFirst),
    noneOfThese: chances[hypotheses.length] ?? 1,
    contradicted: [...seen].filter((id) => notSeen.has(id)),
  };
}

function onceEach({ seen, notSeen, tried = [] }: Evidence) {
  return { seen: new Set(seen), notSeen: new Set(notSeen), tried };
}

/** The chance of a yes if a hypothesis goes a certain way and it was looked for by somebody who may misread. */
export function chanceOfYes({ yes }: Outcome, id: ObservationId): number {
  return mayBeMisread(yes[placeOf(id)] ?? 0, YES_IN_GENERAL, MISREAD);
}

/** The chance of an outcome together with the evidence: what is noticed together comes from one outcome. */
function jointChance(
  { faults }: Hypothesis,
  outcome: Outcome,
  { seen, notSeen, tried }: ReturnType<typeof onceEach>,
): number {
  let product = outcome.chance;
  for (const id of seen) product *= chanceOfYes(outcome, id);
  for (const id of notSeen) product *= 1 - chanceOfYes(outcome, id);
  for (const each of tried) product *= chanceOf(each, faults, outcome);
  return product;
}
