import type { Dictionary } from '../../boards/diagnosis/dictionary';
import { type Evidence, suspicionOf } from '../../boards/diagnosis/posterior';
import { stopsIn } from '../../boards/diagnosis/trials/held-back';
import {
  LEAST_BITS,
  nextTrials,
  type ProposedTrial,
  weighedTrials,
} from '../../boards/diagnosis/trials/next-trials';
import type { Trial } from '../../boards/diagnosis/trials/trial';
import { entropyBits } from '../../boards/inference/information';
import { evidenceOf, type ToldTrouble } from './ranks';

/** Where the trial that settled a trouble stands among those that are proposed, from 1; 0 where it is not. */
export interface Settled {
  readonly id: string;
  /** What settled it, as the report says. */
  readonly by: readonly string[];
  readonly rank: number;
  /** The one that is at that place: of those, or a cheaper one that tells the cause as well from the others. */
  readonly trial: string | undefined;
  readonly first: readonly string[];
  /** Something was seen that ends all starting: then no trial with mains is proposed, whatever it would settle. */
  readonly stopped: boolean;
}

/** How much of what the settling trial tells of the cause a cheaper one has to tell. Our own judgement. */
const AS_WELL = 0.7;

/** Looks each trouble up whose report says what settled it. */
export function settledOf(
  dictionary: Dictionary,
  troubles: readonly ToldTrouble[],
  trials: readonly Trial[],
): readonly Settled[] {
  return troubles.flatMap((trouble) => {
    const { id, cause_class, settled_by: by = [] } = trouble;
    if (by.length === 0) return [];
    const evidence = evidenceOf(trouble);
    const cause = cause_class.replaceAll('_', '-');
    const proposed = nextTrials(dictionary, evidence, trials);
    const separated = (trial: ProposedTrial) => bitsAbout(dictionary, evidence, cause, trial);
    const settling = weighedTrials(dictionary, evidence, trials).filter(({ trial }) => by.includes(trial.id));
    const isAsGood = (each: ProposedTrial) =>
      settling.some(
        (other) =>
          each.effort <= other.effort && separated(each) >= Math.max(LEAST_BITS, AS_WELL * separated(other)),
      );
    const place = proposed.findIndex((each) => by.includes(each.trial.id) || isAsGood(each));
    return [
      {
        id,
        by,
        rank: place + 1,
        trial: proposed[place]?.trial.id,
        first: proposed.slice(0, 3).map(({ trial }) => trial.id),
        stopped: stopsIn(evidence).length > 0,
      },
    ];
  });
}

/** What a trial is expected to tell about whether it is this cause. */
function bitsAbout(
  dictionary: Dictionary,
  evidence: Evidence,
  cause: string,
  { trial, results }: ProposedTrial,
): number {
  const open = (given: Evidence) => {
    const { suspects } = suspicionOf(dictionary, given);
    const chance = suspects.find((suspect) => suspect.cause === cause)?.chance ?? 0;
    return entropyBits([chance, Math.max(0, 1 - chance)]);
  };
  const before = open(evidence);
  const after = results.reduce(
    (sum, { result, chance }) =>
      sum + chance * open({ ...evidence, tried: [...(evidence.tried ?? []), { trial, result }] }),
    0,
  );
  return before - after;
}

/** The share of those that need not stop whose settling trial is among the first few. */
export function settledWithin(all: readonly Settled[], places: number): number {
  const settled = all.filter(({ stopped }) => !stopped);
  const found = settled.filter(({ rank }) => rank > 0 && rank <= places);
  return settled.length === 0 ? 0 : found.length / settled.length;
}
