import { entropyBits } from '../../inference/information';
import type { Steering } from '../posterior';
import { allRowsOf } from './rows';
import { chanceIfNone, type ResultId, type Trial } from './trial';

/** What a trial is expected to tell of the hypotheses, and how likely each of its results is. */
export interface Weighed {
  readonly gainBits: number;
  readonly results: readonly { readonly result: ResultId; readonly chance: number }[];
}

/** A hypothesis that is believed less adds nothing that could be seen in the figures. */
const NOTHING = 1e-12;

/**
 * Weighs a trial by how matters stand: how open its result is, less how open it would stay if the hypothesis
 * were known. The same as `gainBits` of inference, without laying out a row for each hypothesis.
 */
export function weigh({ hypotheses, chances, shares }: Steering, trial: Trial): Weighed {
  const { results } = trial;
  const overall = results.map(
    (result) => (chances[hypotheses.length] ?? 0) * chanceIfNone({ trial, result }),
  );
  let known = (chances[hypotheses.length] ?? 0) * openIfNone(trial);
  const mean = new Float64Array(results.length);
  allRowsOf({ trial, hypotheses }).forEach((rows, at) => {
    const chance = chances[at] ?? 0;
    if (chance < NOTHING) return;
    mean.fill(0);
    rows.forEach((row, outcome) => {
      const share = shares[at]?.[outcome] ?? 0;
      for (let column = 0; column < mean.length; column++)
        mean[column] = (mean[column] ?? 0) + share * (row[column] ?? 0);
    });
    for (let column = 0; column < mean.length; column++)
      overall[column] = (overall[column] ?? 0) + chance * (mean[column] ?? 0);
    known += chance * entropyBits(mean);
  });
  return {
    gainBits: Math.max(0, entropyBits(overall) - known),
    results: results.map((result, column) => ({ result, chance: overall[column] ?? 0 })),
  };
}

function openIfNone(trial: Trial): number {
  return entropyBits(trial.results.map((result) => chanceIfNone({ trial, result })));
}

/** How matters would stand after a trial with a certain result: Bayes' rule on each outcome. */
export function after(steering: Steering, trial: Trial, result: ResultId): Steering {
  const column = trial.results.indexOf(result);
  const { hypotheses } = steering;
  const joint = allRowsOf({ trial, hypotheses }).map((rows, at) =>
    rows.map((row, outcome) => (steering.shares[at]?.[outcome] ?? 0) * (row[column] ?? 0)),
  );
  const likelihoods = joint.map((each) => each.reduce((sum, chance) => sum + chance, 0));
  likelihoods.push(chanceIfNone({ trial, result }));
  const products = likelihoods.map((likelihood, at) => likelihood * (steering.chances[at] ?? 0));
  const all = products.reduce((sum, product) => sum + product, 0);
  return {
    hypotheses,
    chances: Float64Array.from(products, (product) => product / all),
    shares: joint.map((each, at) => each.map((chance) => chance / (likelihoods[at] || 1))),
  };
}
