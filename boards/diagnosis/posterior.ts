import { byIdentity } from '../base/by-identity';
import { beliefFrom, mayBeMisread, observed } from '../inference/belief';
import { chancesOf } from '../inference/log-space';
import type { Dictionary, Hypothesis } from './dictionary';
import type { CauseId } from './faults/causes';
import type { Fault } from './faults/fault';
import { type Exclusion, excludingIn } from './observations/exclusions';
import type { ObservationId } from './observations/observations';
import { type Outcome, placeOf } from './predict';
import { allRowsOf } from './trials/rows';
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

/** Two things at once, of which one may keep the other from showing until it is cured. */
export interface Double {
  readonly causes: readonly [CauseId, CauseId];
  readonly chance: number;
  /** The likeliest two faults of these causes. */
  readonly faults: readonly [Fault, Fault];
}

/** What is believed. The chances of the suspects, of two at once and of none of them add up to 1. */
export interface Suspicion {
  /** The likeliest first. */
  readonly suspects: readonly Suspect[];
  /** The likeliest first; empty where the dictionary knows no pairs. */
  readonly doubles: readonly Double[];
  readonly noneOfThese: number;
  /** Said to be seen and not to be seen. */
  readonly contradicted: readonly ObservationId[];
  /** Both said to be seen, and no machine shows both. */
  readonly excluding: readonly Exclusion[];
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
    const told = known.tried.map(({ trial, result }) => ({
      column: trial.results.indexOf(result),
      rows: allRowsOf({ trial, hypotheses }),
    }));
    const joint = hypotheses.map(({ outcomes }, at) =>
      outcomes.map((outcome, way) =>
        told.reduce(
          (product, { rows, column }) => product * (rows[at]?.[way]?.[column] ?? 0),
          jointChance(outcome, known),
        ),
      ),
    );
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

/** A pair that is believed less steers no look and no trial: five thousand of them would cost more than they tell. */
const STEERS_FROM = 1e-4;

/** The hypotheses that looks and trials are weighed by: every single one, and the pairs that are believed at all. */
export const steering = byIdentity(
  (asked: Asked): Steering => {
    const { hypotheses } = asked.dictionary;
    const { chances, shares } = standingOf(asked);
    if (hypotheses.every(({ faults }) => faults.length === 1)) return { hypotheses, chances, shares };
    const kept = hypotheses.flatMap((hypothesis, at) => {
      const chance = chances[at] ?? 0;
      const counts = hypothesis.faults.length === 1 || chance >= STEERS_FROM;
      return counts ? [{ hypothesis, chance, shares: shares[at] ?? [] }] : [];
    });
    const none = chances[hypotheses.length] ?? 0;
    const all = kept.reduce((sum, { chance }) => sum + chance, none);
    return {
      hypotheses: kept.map(({ hypothesis }) => hypothesis),
      shares: kept.map((each) => each.shares),
      chances: Float64Array.from([...kept.map(({ chance }) => chance), none], (chance) => chance / all),
    };
  },
  ({ dictionary, evidence }) => [dictionary, evidence],
);

export interface Steering extends Standing {
  readonly hypotheses: readonly Hypothesis[];
}

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
  const { seen, notSeen } = onceEach(evidence);
  return {
    suspects: [...byCause]
      .map(([cause, suspect]) => ({
        cause,
        chance: suspect.chance,
        faults: suspect.faults.sort(likelierFirst),
      }))
      .sort(likelierFirst),
    doubles: doublesOf(dictionary, chances),
    noneOfThese: chances[hypotheses.length] ?? 1,
    contradicted: [...seen].filter((id) => notSeen.has(id)),
    excluding: excludingIn(seen),
  };
}

function likelierFirst(a: { readonly chance: number }, b: { readonly chance: number }): number {
  return b.chance - a.chance;
}

function doublesOf({ hypotheses }: Dictionary, chances: Float64Array): readonly Double[] {
  const found = new Map<string, Double & { best: number }>();
  hypotheses.forEach(({ faults: [first, second] }, at) => {
    if (first === undefined || second === undefined) return;
    const faults = first.cause < second.cause ? ([first, second] as const) : ([second, first] as const);
    const causes = [faults[0].cause, faults[1].cause] as const;
    const key = causes.join(' ');
    const own = chances[at] ?? 0;
    const known = found.get(key);
    const chance = (known?.chance ?? 0) + own;
    const better = known === undefined || own > known.best;
    found.set(key, better ? { causes, faults, chance, best: own } : { ...known, chance });
  });
  return [...found.values()]
    .map(({ causes, faults, chance }) => ({ causes, faults, chance }))
    .sort(likelierFirst);
}

/**
 * Whether the likeliest single fault leaves something of what was seen, or of what came of a trial, unexplained,
 * so that two at once are worth looking for.
 */
export function explainsBadly(dictionary: Dictionary, evidence: Evidence): boolean {
  const { hypotheses } = dictionary;
  const { chances, shares } = standingOf({ dictionary, evidence });
  const best = hypotheses.reduce(
    (first, _, at) => ((chances[at] ?? 0) > (chances[first] ?? 0) ? at : first),
    0,
  );
  const hypothesis = hypotheses[best];
  if (hypothesis === undefined) return false;
  const mean = (chance: (outcome: Outcome) => number) =>
    hypothesis.outcomes.reduce((sum, outcome, at) => sum + (shares[best]?.[at] ?? 0) * chance(outcome), 0);
  const { seen, tried } = onceEach(evidence);
  return (
    [...seen].some((id) => mean(({ yes }) => yes[placeOf(id)] ?? 0) < EXPLAINED_FROM) ||
    tried.some((each) => mean((outcome) => chanceOf(each, hypothesis.faults, outcome)) < EXPLAINED_FROM)
  );
}

/** What is rarer than this under a fault is not explained by it. Our own judgement. */
const EXPLAINED_FROM = 0.03;

/** Whether none of the known faults is more likely than any of them. */
export function isNoneLikeliest({ suspects, doubles, noneOfThese }: Suspicion): boolean {
  return noneOfThese > Math.max(0, suspects[0]?.chance ?? 0, doubles[0]?.chance ?? 0);
}

function onceEach({ seen, notSeen, tried = [] }: Evidence) {
  return { seen: new Set(seen), notSeen: new Set(notSeen), tried };
}

/** The chance of a yes if a hypothesis goes a certain way and it was looked for by somebody who may misread. */
export function chanceOfYes({ yes }: Outcome, id: ObservationId): number {
  return mayBeMisread(yes[placeOf(id)] ?? 0, YES_IN_GENERAL, MISREAD);
}

/** The chance of an outcome together with what was noticed: what is noticed together comes from one outcome. */
function jointChance(outcome: Outcome, { seen, notSeen }: ReturnType<typeof onceEach>): number {
  let product = outcome.chance;
  for (const id of seen) product *= chanceOfYes(outcome, id);
  for (const id of notSeen) product *= 1 - chanceOfYes(outcome, id);
  return product;
}
