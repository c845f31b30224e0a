import { type Belief, beliefFrom, mayBeMisread, observed, ranked } from '../inference/belief';
import type { CauseId } from './faults/causes';
import type { Fault } from './faults/fault';
import type { ObservationId } from './observations/observations';
import { type Outcome, placeOf, predict } from './predict';
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

/** A list of faults with what each would show, worked out once. */
export interface Dictionary {
  readonly faults: readonly Fault[];
  readonly outcomes: readonly (readonly Outcome[])[];
}

export function dictionaryOf(faults: readonly Fault[]): Dictionary {
  return { faults, outcomes: faults.map(predict) };
}

/** What is believed of each fault of a dictionary, and last of none of them, in the order of its list. */
export function beliefAfter({ faults, outcomes }: Dictionary, evidence: Evidence): Belief {
  const all = faults.reduce((sum, { weight }) => sum + weight, 0) || 1;
  const noneWeight = (all * NONE_SHARE) / (1 - NONE_SHARE);
  const before = beliefFrom([...faults.map(({ weight }) => weight), noneWeight]);
  const { seen, notSeen, tried } = onceEach(evidence);
  const ifNone =
    YES_IF_NONE ** seen.size *
    (1 - YES_IF_NONE) ** notSeen.size *
    tried.reduce((product, each) => product * chanceIfNone(each), 1);
  const sumOf = (chances: readonly number[]) => chances.reduce((sum, each) => sum + each, 0);
  const likelihoods = faults.map((fault, at) => sumOf(jointChances(fault, outcomes[at] ?? [], evidence)));
  return observed(before, [...likelihoods, ifNone]);
}

/** The suspects after what was noticed and tried. An observation named twice counts once. */
export function suspicionOf(dictionary: Dictionary, evidence: Evidence): Suspicion {
  const { faults } = dictionary;
  const { seen, notSeen } = onceEach(evidence);
  const order = ranked(beliefAfter(dictionary, evidence));

  const byCause = new Map<CauseId, { chance: number; faults: LikelyFault[] }>();
  let noneOfThese = 0;
  for (const { index, chance } of order) {
    const fault = faults[index];
    if (fault === undefined) {
      noneOfThese = chance;
      continue;
    }
    const suspect = byCause.get(fault.cause) ?? { chance: 0, faults: [] };
    suspect.chance += chance;
    suspect.faults.push({ fault, chance });
    byCause.set(fault.cause, suspect);
  }
  return {
    suspects: [...byCause]
      .map(([cause, suspect]) => ({ cause, ...suspect }))
      .sort((a, b) => b.chance - a.chance),
    noneOfThese,
    contradicted: [...seen].filter((id) => notSeen.has(id)),
  };
}

function onceEach({ seen, notSeen, tried = [] }: Evidence) {
  return { seen: new Set(seen), notSeen: new Set(notSeen), tried };
}

/**
 * The chance of each outcome of a fault together with the evidence, in the order of the outcomes: what is
 * noticed together comes from one outcome.
 */
export function jointChances(
  fault: Fault,
  outcomes: readonly Outcome[],
  evidence: Evidence,
): readonly number[] {
  const { seen, notSeen, tried } = onceEach(evidence);
  return outcomes.map((outcome) => {
    const { chance, yes } = outcome;
    let product = chance;
    for (const id of seen) product *= mayBeMisread(yes[placeOf(id)] ?? 0, YES_IN_GENERAL, MISREAD);
    for (const id of notSeen)
      product *= mayBeMisread(1 - (yes[placeOf(id)] ?? 0), 1 - YES_IN_GENERAL, MISREAD);
    for (const each of tried) product *= chanceOf(each, fault, outcome);
    return product;
  });
}
