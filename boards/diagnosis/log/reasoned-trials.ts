import type { Dictionary } from '../dictionary';
import type { CauseId } from '../faults/causes';
import { type Evidence, steering } from '../posterior';
import type { Risk } from '../trials/held-back';
import { nextTrialsInSteps, type ProposedTrial, weighedTrials } from '../trials/next-trials';
import type { ResultId, Trial } from '../trials/trial';
import { after } from '../trials/weigh';
import { chancesBy } from './cause-chances';

/** A trial that may be made next, and what each of its results would say. */
export interface ReasonedTrial {
  /** The id of the trial. */
  readonly trial: string;
  readonly gainBits: number;
  readonly effort: number;
  /** Why it must not be made now. */
  readonly risk?: Risk;
  readonly results: readonly {
    readonly result: ResultId;
    readonly chance: number;
    /** What would be believed most then; undefined: none of these. */
    readonly believed?: { readonly cause: CauseId; readonly chance: number };
  }[];
}

/** Those that may be made, the best first, then those that carry a risk. */
export function* reasonedTrialsInSteps(
  dictionary: Dictionary,
  evidence: Evidence,
  trials: readonly Trial[],
): Generator<null, readonly ReasonedTrial[]> {
  const weighed = weighedTrials(dictionary, evidence, trials);
  const risky = weighed.filter(({ risk }) => risk !== undefined);
  yield null;
  const reasoned: ReasonedTrial[] = [];
  const proposed = yield* nextTrialsInSteps(dictionary, evidence, weighed);
  for (const each of [...proposed, ...risky]) {
    yield null;
    const { trial, gainBits, effort, risk, results } = each;
    reasoned.push({
      trial: trial.id,
      gainBits,
      effort,
      ...(risk && { risk }),
      results: results.map(({ result, chance }) => {
        const believed = likeliestAfter(dictionary, evidence, each, result);
        return { result, chance, ...(believed && { believed }) };
      }),
    });
  }
  return reasoned;
}

/** The likeliest cause after a result; undefined where none of these is likelier. */
function likeliestAfter(
  dictionary: Dictionary,
  evidence: Evidence,
  { trial }: ProposedTrial,
  result: ResultId,
): { readonly cause: CauseId; readonly chance: number } | undefined {
  const then = after(steering({ dictionary, evidence }), trial, result);
  const none = then.chances[then.hypotheses.length] ?? 0;
  let best: { readonly cause: CauseId; readonly chance: number } | undefined;
  for (const [cause, chance] of chancesBy(then.hypotheses, then))
    if (chance > (best?.chance ?? none)) best = { cause, chance };
  return best;
}
