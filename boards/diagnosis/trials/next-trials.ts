import { bestQuestion, type Question } from '../../inference/best-question';
import { gainBits } from '../../inference/information';
import { chancesOf } from '../../inference/log-space';
import { OBSERVATIONS, type ObservationId } from '../observations/observations';
import { beliefAfter, type Dictionary, type Evidence, jointChances, YES_IF_NONE } from '../posterior';
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
  const chances = chancesOf(beliefAfter(dictionary, evidence));
  // The chance of a yes under a fault is that of the evidence with the yes, beside that without it.
  const joint = (seen: readonly ObservationId[], notSeen: readonly ObservationId[]) =>
    dictionary.faults.map((fault, at) =>
      jointChances(fault, dictionary.outcomes[at] ?? [], { ...evidence, seen, notSeen }).reduce(
        (sum, each) => sum + each,
        0,
      ),
    );
  return OBSERVATIONS.filter(({ id, sense }) => !known.has(id) && LOOKS.has(sense))
    .map(({ id }) => {
      const yes = joint([...evidence.seen, id], evidence.notSeen);
      const no = joint(evidence.seen, [...evidence.notSeen, id]);
      const rows = yes.map((each, at) => {
        const all = each + (no[at] ?? 0) || 1;
        return [each / all, (no[at] ?? 0) / all];
      });
      return { id, gainBits: gainBits(chances, [...rows, [YES_IF_NONE, 1 - YES_IF_NONE]]) };
    })
    .filter((look) => look.gainBits > LEAST_BITS)
    .sort((a, b) => b.gainBits - a.gainBits);
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
  const { faults, outcomes } = dictionary;
  const { tried = [] } = evidence;
  const chances = chancesOf(beliefAfter(dictionary, evidence));
  const burns = faults.reduce((sum, { cause }, at) => sum + (BURNS.has(cause) ? (chances[at] ?? 0) : 0), 0);
  const stop = stopsIn(evidence).length > 0;
  const shares = faults.map((fault, at) => sharesOf(jointChances(fault, outcomes[at] ?? [], evidence)));

  const isOpen = ({ id, after }: Trial) =>
    !tried.some(({ trial }) => trial.id === id) &&
    (!after || tried.some(({ trial, result }) => trial.id === after.trial && result === after.result));

  return trials.filter(isOpen).map((trial) => {
    const rows = faults.map((fault, at) =>
      trial.results.map((result) =>
        (outcomes[at] ?? []).reduce(
          (sum, outcome, way) => sum + (shares[at]?.[way] ?? 0) * chanceOf({ trial, result }, fault, outcome),
          0,
        ),
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

function sharesOf(joint: readonly number[]): readonly number[] {
  const all = joint.reduce((sum, each) => sum + each, 0) || 1;
  return joint.map((each) => each / all);
}
