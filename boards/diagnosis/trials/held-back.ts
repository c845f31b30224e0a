import { OBSERVATIONS, type ObservationId } from '../observations/observations';
import type { Evidence, Steering } from '../posterior';
import { type Outcome, placeOf } from '../predict';
import { BURNS } from './causes-touched';
import type { Trial } from './trial';

/** Why a trial must not be made, the gravest first: only one that starts the machine, or needs mains, can do harm. */
export const RISKS = ['stop', 'danger', 'may-burn', 'put-right'] as const;
export type Risk = (typeof RISKS)[number];

/** What ends all trying: an observation of heat, smoke, sparks or a shock, or a look that found something burnt. */
export type Stop = ObservationId | 'burnt';

/** From which chance of a fault that burns on nothing is started any more. Common practice, no source. */
const MAY_BURN_FROM = 0.3;
/** From which chance of smoke or a melted plug a fault burns on, whatever it is called. Our own judgement. */
const BURNS_FROM = 0.2;
const BURNT: readonly ObservationId[] = ['smoke', 'melted-plug'];

/** What was seen or found that ends all trying. What was seen in the order of the vocabulary, then what was found. */
export function stopsIn({ seen, tried = [] }: Evidence): readonly Stop[] {
  const stops = OBSERVATIONS.filter(({ id, stop }) => stop && seen.includes(id)).map(({ id }) => id);
  return tried.some(({ result }) => result === 'burnt') ? [...stops, 'burnt'] : stops;
}

/** The looks that found something which was not put right since. */
function unmended({ tried = [] }: Evidence): ReadonlySet<string> {
  const found = tried.filter(({ trial, result }, at) => {
    if (!trial.results.includes('not-found') || result === 'not-found') return false;
    return !tried.slice(at + 1).some((later) => later.trial.after?.trial === trial.id);
  });
  return new Set(found.map(({ trial }) => trial.id));
}

/** Why the machine is not started now; undefined where it may be. The gravest reason. */
export function startsHeldBack(
  steering: Steering,
  evidence: Evidence,
  trials: readonly Trial[],
): Risk | undefined {
  if (stopsIn(evidence).length > 0) return 'stop';
  if (trials.some(({ danger }) => danger)) return 'danger';
  if (chanceOfBurning(steering) >= MAY_BURN_FROM) return 'may-burn';
  return unmended(evidence).size > 0 ? 'put-right' : undefined;
}

/** Why a trial is held back where starts are: one that puts right what was found is the way out of that. */
export function riskOf(trial: Trial, held: Risk | undefined, evidence: Evidence): Risk | undefined {
  if (!trial.powered) return undefined;
  return held === 'put-right' && putsRight(trial, evidence) ? undefined : held;
}

/** Whether a trial is the start after what was found is put right, and that is still to be done. */
export function putsRight({ after }: Trial, evidence: Evidence): boolean {
  return after !== undefined && unmended(evidence).has(after.trial);
}

/** How likely it is that another start burns something. */
function chanceOfBurning({ hypotheses, chances, shares }: Steering): number {
  return hypotheses.reduce((sum, { faults, outcomes }, at) => {
    if (faults.some(({ cause }) => BURNS.has(cause))) return sum + (chances[at] ?? 0);
    const burnt = outcomes.reduce(
      (share, outcome, way) => share + (showsBurnt(outcome) ? (shares[at]?.[way] ?? 0) : 0),
      0,
    );
    return sum + burnt * (chances[at] ?? 0);
  }, 0);
}

function showsBurnt({ yes }: Outcome): boolean {
  return BURNT.some((id) => (yes[placeOf(id)] ?? 0) >= BURNS_FROM);
}
