import { byIdentity } from '../../base/by-identity';
import type { Hypothesis } from '../dictionary';
import { chanceOf, type Trial } from './trial';

/** For each outcome of a hypothesis the chances of a trial's results, in the order of its results. */
export type Rows = readonly (readonly number[])[];

const rowsOf = byIdentity(
  ({ trial, hypothesis: { faults, outcomes } }: { readonly trial: Trial; readonly hypothesis: Hypothesis }) =>
    outcomes.map((outcome) => trial.results.map((result) => chanceOf({ trial, result }, faults, outcome))),
  ({ trial, hypothesis }) => [trial, hypothesis],
);

/** The same of all hypotheses in one go: they are asked for again and again. */
export const allRowsOf = byIdentity(
  ({ trial, hypotheses }: { readonly trial: Trial; readonly hypotheses: readonly Hypothesis[] }) =>
    hypotheses.map((hypothesis): Rows => rowsOf({ trial, hypothesis })),
  ({ trial, hypotheses }) => [trial, hypotheses],
);
