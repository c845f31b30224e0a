import type { Dictionary } from '../../boards/diagnosis/dictionary';
import { observationNamed } from '../../boards/diagnosis/observations/observations';
import { type Evidence, suspicionOf } from '../../boards/diagnosis/posterior';

/** A trouble that somebody had, as a file of cases tells it. */
export interface ToldTrouble {
  readonly id: string;
  /** One of the causes, with underscores or hyphens. */
  readonly cause_class: string;
  readonly symptom_codes: readonly string[];
  /** Whether the report settles the cause. */
  readonly root_cause_confirmed: boolean;
  /** Trials that settled it, where the report says so: any of them. */
  readonly settled_by?: readonly string[];
}

/** What was noticed, as evidence; unknown words are left out. */
export function evidenceOf({ symptom_codes }: Pick<ToldTrouble, 'symptom_codes'>): Evidence {
  return { seen: symptom_codes.flatMap((code) => observationNamed(code)?.id ?? []), notSeen: [] };
}

/** The place of the true cause among the suspects, from 1; 0 where it is none of them. */
export interface Ranked {
  readonly id: string;
  readonly cause: string;
  readonly rank: number;
  /** Settled, with something noticed. */
  readonly counts: boolean;
  readonly unknownCodes: readonly string[];
  readonly first: readonly { readonly cause: string; readonly chance: number }[];
}

/** Looks each trouble up by what was noticed alone. */
export function ranksOf(dictionary: Dictionary, troubles: readonly ToldTrouble[]): readonly Ranked[] {
  return troubles.map(({ id, cause_class, symptom_codes, root_cause_confirmed }) => {
    const cause = cause_class.replaceAll('_', '-');
    const evidence = evidenceOf({ symptom_codes });
    const { suspects } = suspicionOf(dictionary, evidence);
    return {
      id,
      cause,
      rank: suspects.findIndex((suspect) => suspect.cause === cause) + 1,
      counts: root_cause_confirmed && evidence.seen.length > 0,
      unknownCodes: symptom_codes.filter((code) => observationNamed(code) === undefined),
      first: suspects.slice(0, 3).map((suspect) => ({ cause: suspect.cause, chance: suspect.chance })),
    };
  });
}

/** The share of those that count whose true cause is among the first few. */
export function shareWithin(ranks: readonly Ranked[], places: number): number {
  const counting = ranks.filter(({ counts }) => counts);
  const found = counting.filter(({ rank }) => rank > 0 && rank <= places);
  return counting.length === 0 ? 0 : found.length / counting.length;
}
