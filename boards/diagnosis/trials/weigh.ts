import { byIdentity } from '../../base/by-identity';
import { gainBits } from '../../inference/information';
import type { Hypothesis } from '../dictionary';
import type { Steering } from '../posterior';
import { chanceIfNone, chanceOf, type ResultId, type Trial } from './trial';

/** What a trial is expected to tell of the hypotheses, and how likely each of its results is. */
export interface Weighed {
  readonly gainBits: number;
  readonly results: readonly { readonly result: ResultId; readonly chance: number }[];
}

/** For each outcome of a hypothesis the chances of a trial's results, in the order of its results. */
const rowsOf = byIdentity(
  ({ trial, hypothesis: { faults, outcomes } }: { readonly trial: Trial; readonly hypothesis: Hypothesis }) =>
    outcomes.map((outcome) => trial.results.map((result) => chanceOf({ trial, result }, faults, outcome))),
  ({ trial, hypothesis }) => [trial, hypothesis],
);

/** Weighs a trial by how matters stand. */
export function weigh({ hypotheses, chances, shares }: Steering, trial: Trial): Weighed {
  const { results } = trial;
  const rows = hypotheses.map((hypothesis, at) => {
    const means = results.map(() => 0);
    rowsOf({ trial, hypothesis }).forEach((row, outcome) => {
      const share = shares[at]?.[outcome] ?? 0;
      for (let column = 0; column < means.length; column++)
        means[column] = (means[column] ?? 0) + share * (row[column] ?? 0);
    });
    return means;
  });
  rows.push(results.map((result) => chanceIfNone({ trial, result })));
  return {
    gainBits: gainBits(chances, rows),
    results: results.map((result, column) => ({
      result,
      chance: rows.reduce((sum, row, at) => sum + (chances[at] ?? 0) * (row[column] ?? 0), 0),
    })),
  };
}

/** How matters would stand after a trial with a certain result: Bayes' rule on each outcome. */
export function after(steering: Steering, trial: Trial, result: ResultId): Steering {
  const column = trial.results.indexOf(result);
  const { hypotheses } = steering;
  const joint = hypotheses.map((hypothesis, at) =>
    rowsOf({ trial, hypothesis }).map(
      (row, outcome) => (steering.shares[at]?.[outcome] ?? 0) * (row[column] ?? 0),
    ),
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
