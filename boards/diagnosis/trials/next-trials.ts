import { bestQuestion, type Question } from '../../inference/best-question';
import { gainBits } from '../../inference/information';
import type { Dictionary } from '../dictionary';
import { OBSERVATIONS, type ObservationId } from '../observations/observations';
import { chanceOfYes, type Evidence, standingOf, YES_IF_NONE } from '../posterior';
import type { Outcome } from '../predict';
import { BURNS } from './causes-touched';
import { chanceIfNone, chanceOf, type ResultId, type Trial } from './trial';

/** Why a trial must not be made. */
type Risk = 'stop' | 'may-burn';

/** A trial beside what it is expected to tell and what each result is expected to be. */
export interface ProposedTrial extends Question {
  readonly trial: Trial;
  readonly results: readonly { readonly result: ResultId; readonly chance: number }[];
  readonly risk?: Risk;
}

/** From which chance of a fault that burns on nothing is started any more. Common practice, no source. */
const MAY_BURN_FROM = 0.3;
/** A trial that tells less is not worth a screw. */
const LEAST_BITS = 0.005;

/** Ways of noticing that need no hand on the machine. */
const LOOKS: ReadonlySet<string> = new Set(['see', 'hear', 'smell', 'read']);

/** What was seen that ends all trying: heat, smoke, sparks, a shock. In the order of the vocabulary. */
export function stopsIn({ seen }: Evidence): readonly ObservationId[] {
  return OBSERVATIONS.filter(({ id, stop }) => stop && seen.includes(id)).map(({ id }) => id);
}

/** Something to look, listen or read for that was not yet, and what the answer is expected to tell. */
interface ProposedLook {
  readonly id: ObservationId;
  readonly gainBits: number;
}

/** What to look for before anything is touched, the most telling first; nothing once it has to stop. */
export function nextLooks(dictionary: Dictionary, evidence: Evidence): readonly ProposedLook[] {
  if (stopsIn(evidence).length > 0) return [];
  const known = new Set([...evidence.seen, ...evidence.notSeen]);
  const { chances, shares } = standingOf({ dictionary, evidence });
  return OBSERVATIONS.filter(({ id, sense }) => !known.has(id) && LOOKS.has(sense))
    .map(({ id }) => {
      const rows = dictionary.hypotheses.map(({ outcomes }, at) => {
        const yes = weighed(shares[at], outcomes, (outcome) => chanceOfYes(outcome, id));
        return [yes, 1 - yes];
      });
      return { id, gainBits: gainBits(chances, [...rows, [YES_IF_NONE, 1 - YES_IF_NONE]]) };
    })
    .filter((look) => look.gainBits > LEAST_BITS)
    .sort((a, b) => b.gainBits - a.gainBits);
}

/** The mean of a chance over the outcomes of a hypothesis. */
function weighed(
  shares: readonly number[] | undefined,
  outcomes: readonly Outcome[],
  chance: (outcome: Outcome) => number,
): number {
  return outcomes.reduce((sum, outcome, at) => sum + (shares?.[at] ?? 0) * chance(outcome), 0);
}

/** The trials to propose, the best first: those that tell most for their effort and carry no risk. */
export function nextTrials(
  dictionary: Dictionary,
  evidence: Evidence,
  trials: readonly Trial[],
): readonly ProposedTrial[] {
  const left = [...weighedTrials(dictionary, evidence, trials)];
  const order: ProposedTrial[] = [];
  for (let best = bestQuestion(left, LEAST_BITS); best; best = bestQuestion(left, LEAST_BITS)) {
    order.push(best);
    left.splice(left.indexOf(best), 1);
  }
  return order;
}

/** Every trial that has not been made and has a meaning now, with its gain, those with a risk among them. */
export function weighedTrials(
  dictionary: Dictionary,
  evidence: Evidence,
  trials: readonly Trial[],
): readonly ProposedTrial[] {
  const { hypotheses } = dictionary;
  const { tried = [] } = evidence;
  const { chances, shares } = standingOf({ dictionary, evidence });
  const burns = hypotheses.reduce(
    (sum, { faults }, at) => sum + (faults.some(({ cause }) => BURNS.has(cause)) ? (chances[at] ?? 0) : 0),
    0,
  );
  const stop = stopsIn(evidence).length > 0;

  const isOpen = ({ id, after }: Trial) =>
    !tried.some(({ trial }) => trial.id === id) &&
    (!after || tried.some(({ trial, result }) => trial.id === after.trial && result === after.result));

  return trials.filter(isOpen).map((trial) => {
    const rows = hypotheses.map(({ faults, outcomes }, at) =>
      trial.results.map((result) =>
        weighed(shares[at], outcomes, (outcome) => chanceOf({ trial, result }, faults, outcome)),
      ),
    );
    rows.push(trial.results.map((result) => chanceIfNone({ trial, result })));
    const risk = stop ? 'stop' : trial.powered && burns >= MAY_BURN_FROM ? 'may-burn' : undefined;
    return {
      trial,
      gainBits: gainBits(chances, rows),
      effort: trial.effort,
      results: trial.results.map((result, column) => ({
        result,
        chance: rows.reduce((sum, row, at) => sum + (chances[at] ?? 0) * (row[column] ?? 0), 0),
      })),
      ...(risk && { risk }),
    };
  });
}
