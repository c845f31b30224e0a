import { finished } from '../../base/finished';
import { bestQuestion, type Question } from '../../inference/best-question';
import { gainBits } from '../../inference/information';
import type { Dictionary } from '../dictionary';
import { WITH_MAINS_ON } from '../observations/before-press';
import { excludedBy } from '../observations/exclusions';
import { OBSERVATIONS, type ObservationId } from '../observations/observations';
import { chanceOfYes, type Evidence, steering, YES_IF_NONE } from '../posterior';
import type { Outcome } from '../predict';
import { putsRight, type Risk, riskOf, startsHeldBack } from './held-back';
import type { Trial } from './trial';
import { after, type Weighed, weigh } from './weigh';

/** A trial beside what it is expected to tell and what each result is expected to be. */
export interface ProposedTrial extends Question, Weighed {
  readonly trial: Trial;
  readonly risk?: Risk;
}

/** A trial that tells less is not worth a screw. */
export const LEAST_BITS = 0.005;

/** Ways of noticing that need no hand on the machine. */
const LOOKS: ReadonlySet<string> = new Set(['see', 'hear', 'smell', 'read']);

/** Something to look, listen or read for that was not yet, and what the answer is expected to tell. */
interface ProposedLook {
  readonly id: ObservationId;
  readonly gainBits: number;
}

/**
 * What to look for before anything is touched, the most telling first; nothing once it has to stop. While starts are
 * held back nothing is asked that would have to be watched at one, or with mains on.
 */
export function nextLooks(
  dictionary: Dictionary,
  evidence: Evidence,
  trials: readonly Trial[],
): readonly ProposedLook[] {
  const standing = steering({ dictionary, evidence });
  const held = startsHeldBack(standing, evidence, trials);
  if (held === 'stop') return [];
  const { seen, notSeen } = evidence;
  const known = new Set([...seen, ...notSeen, ...excludedBy(new Set(seen))]);
  const { chances, shares, hypotheses } = standing;
  const mayAsk = ({ id, sense, moment }: (typeof OBSERVATIONS)[number]) =>
    LOOKS.has(sense) && (!held || (moment === 'before-press' && !WITH_MAINS_ON.has(id)));
  return OBSERVATIONS.filter((each) => !known.has(each.id) && mayAsk(each))
    .map(({ id }) => {
      const rows = hypotheses.map(({ outcomes }, at) => {
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

/**
 * The trials to propose, in the order in which to make them: first the one that tells most for its effort, then
 * each time the one that would if those before it had told nothing. None with a risk is among them.
 */
export function nextTrials(
  dictionary: Dictionary,
  evidence: Evidence,
  trials: readonly Trial[],
): readonly ProposedTrial[] {
  return finished(nextTrialsInSteps(dictionary, evidence, weighedTrials(dictionary, evidence, trials)));
}

/**
 * The same in pieces, after each of which it may be dropped.
 *
 * @param now the trials as they weigh by that evidence
 */
export function* nextTrialsInSteps(
  dictionary: Dictionary,
  evidence: Evidence,
  now: readonly ProposedTrial[],
): Generator<null, readonly ProposedTrial[]> {
  // A risk that would be less by then is still a risk now.
  const allowed = now.filter(({ risk }) => risk === undefined);
  const order: ProposedTrial[] = [];
  let standing = steering({ dictionary, evidence });
  while (order.length < PLANNED) {
    yield null;
    const left = allowed
      .filter((each) => !order.includes(each))
      .map((now) => ({ now, effort: now.effort, ...weigh(standing, now.trial) }));
    const best = bestQuestion(left, LEAST_BITS);
    if (best === undefined) break;
    order.push(best.now);
    standing = after(standing, best.now.trial, best.now.trial.tellsNothing);
  }
  // Nothing else is started before that, so it is there however little it would tell.
  const isWorthIt = ({ trial, gainBits: gain }: ProposedTrial) =>
    gain > LEAST_BITS || putsRight(trial, evidence);
  const rest = allowed.filter((each) => isWorthIt(each) && !order.includes(each));
  return [...order, ...rest.sort((a, b) => worth(b) - worth(a))];
}

/** How many are put in the order in which to make them; the others follow by what each would tell now. */
const PLANNED = 4;

function worth({ gainBits: gain, effort }: Question): number {
  return gain / effort;
}

/** Every trial that has not been made and has a meaning now, with its gain, those with a risk among them. */
export function weighedTrials(
  dictionary: Dictionary,
  evidence: Evidence,
  trials: readonly Trial[],
): readonly ProposedTrial[] {
  const { tried = [] } = evidence;
  const standing = steering({ dictionary, evidence });
  const held = startsHeldBack(standing, evidence, trials);

  // What is found anew is put right anew.
  const isMade = (one: Trial) => tried.some(({ trial }) => trial.id === one.id) && !putsRight(one, evidence);
  const isOpen = (one: Trial) =>
    !isMade(one) &&
    (!one.after ||
      tried.some(({ trial, result }) => trial.id === one.after?.trial && one.after.results.includes(result)));

  return trials.filter(isOpen).map((trial) => {
    const risk = riskOf(trial, held, evidence);
    return {
      trial,
      ...weigh(standing, trial),
      effort: trial.effort,
      ...(risk && { risk }),
    };
  });
}
