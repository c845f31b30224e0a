import { seededRandom } from '../../boards/base/random';
import type { Dictionary } from '../../boards/diagnosis/dictionary';
import type { Fault } from '../../boards/diagnosis/faults/fault';
import { OBSERVATIONS, type ObservationId } from '../../boards/diagnosis/observations/observations';
import { type Evidence, suspicionOf } from '../../boards/diagnosis/posterior';
import { type Outcome, placeOf } from '../../boards/diagnosis/predict';
import { stopsIn } from '../../boards/diagnosis/trials/held-back';
import { LEAST_BITS, nextLooks, weighedTrials } from '../../boards/diagnosis/trials/next-trials';
import { chanceOf, type Trial } from '../../boards/diagnosis/trials/trial';
import { bestQuestion } from '../../boards/inference/best-question';

/** A bench that is thought up: one fault drawn from the priors, with one of the ways in which it goes. */
interface Bench {
  readonly fault: Fault;
  readonly outcome: Outcome;
}

/** How the search for the culprit went on a bench. */
export interface Search {
  readonly trials: number;
  readonly minutes: number;
  /** The cause of which 95 % are certain, or none where nothing more could be tried. */
  readonly named: string | undefined;
  readonly isRight: boolean;
  /** The true cause, and the likeliest two at the end. */
  readonly cause: string;
  readonly left: readonly string[];
}

/** The same benches, searched by what the program proposes and by a fixed list. */
export interface Simulated {
  readonly benches: number;
  /** Of them, those that showed heat or smoke, where nothing is started: they are not searched. */
  readonly stopped: number;
  readonly proposed: readonly Search[];
  readonly fixed: readonly Search[];
}

/** The share of readings that are wrong, and from which chance a culprit is named. */
const MISREAD = 0.05;
const CERTAIN_FROM = 0.95;

/** Trials after which the search is left off. */
const TRIALS_MOST = 25;

/** Things that somebody tells before being asked, and is asked then. */
const TOLD_MOST = 3;
const ASKED = 4;

/**
 * The order of checks that the trade teaches, cheap and safe ones first (common practice, no source): outlet,
 * rear switch and selector, mains off for a while; standby; the plugs of the supply; all front leads off, then
 * back one at a time; USB devices; caps and cell; the fewest parts; out of the case; another supply. Then
 * whatever there is besides.
 */
const FIXED_ORDER = [
  'other-outlet',
  'look-rear-switch',
  'mains-off-a-minute',
  'measure-standby',
  'look-supply-plugs',
  'look-processor-plug',
  'bare-pins',
  'back:',
  'usb-devices-off',
  'look-caps',
  'look-case-open',
  'measure-cell',
  'settings-cleared',
  'fewest-parts',
  'one-memory-module',
  'card-out',
  'look-under-board',
  'out-of-case',
  'other-supply',
  'look-front-plugs',
  'look-cooler',
  'look-fans',
] as const;

/** Draws benches and searches each of them both ways. The same seed gives the same benches. */
export function simulated(
  dictionary: Dictionary,
  trials: readonly Trial[],
  { benches, seed }: { readonly benches: number; readonly seed: number },
): Simulated {
  const random = seededRandom(seed);
  const proposed: Search[] = [];
  const fixed: Search[] = [];
  let stopped = 0;
  for (let at = 0; at < benches; at++) {
    const bench = drawBench(dictionary, random);
    const evidence = firstEvidence(dictionary, trials, bench, random);
    if (stopsIn(evidence).length > 0) {
      stopped += 1;
      continue;
    }
    // What comes of a trial does not depend on when it is made: both searches meet the same machine.
    const answers = answersOf(bench, random);
    proposed.push(
      searched(dictionary, bench, evidence, answers, (given) => bestOf(dictionary, given, trials)),
    );
    fixed.push(
      searched(dictionary, bench, evidence, answers, (given) => nextOnList(dictionary, given, trials)),
    );
  }
  return { benches, stopped, proposed, fixed };
}

function drawBench({ faults, outcomes }: Dictionary, random: () => number): Bench {
  const at = drawn(
    faults.map(({ weight }) => weight),
    random,
  );
  const own = outcomes[at] ?? [];
  const outcome =
    own[
      drawn(
        own.map(({ chance }) => chance),
        random,
      )
    ];
  const fault = faults[at];
  if (fault === undefined || outcome === undefined) throw new Error('No faults to draw from');
  return { fault, outcome };
}

/** The place of one of some weights, drawn by them. */
function drawn(weights: readonly number[], random: () => number): number {
  let left = random() * weights.reduce((sum, weight) => sum + weight, 0);
  const at = weights.findIndex((weight) => {
    left -= weight;
    return left < 0;
  });
  return at < 0 ? weights.length - 1 : at;
}

/** What is told before anything is asked, then the answers to what the program would ask first: 5 in 100 are wrong. */
function firstEvidence(
  dictionary: Dictionary,
  trials: readonly Trial[],
  { outcome }: Bench,
  random: () => number,
): Evidence {
  const shows = new Map(OBSERVATIONS.map(({ id }) => [id, random() < (outcome.yes[placeOf(id)] ?? 0)]));
  const answered = (id: ObservationId) => (random() < MISREAD ? !shows.get(id) : shows.get(id) === true);
  const told = OBSERVATIONS.map(({ id }) => id).filter((id) => shows.get(id) && id !== 'standby-light');
  let evidence: Evidence = { seen: told.slice(0, TOLD_MOST).filter(answered), notSeen: [] };
  for (let asked = 0; asked < ASKED; asked++) {
    const [look] = nextLooks(dictionary, evidence, trials);
    if (look === undefined) break;
    const { seen, notSeen } = evidence;
    evidence = answered(look.id)
      ? { seen: [...seen, look.id], notSeen }
      : { seen, notSeen: [...notSeen, look.id] };
  }
  return evidence;
}

/** What comes of each trial on a bench, drawn when it is first made, and the same whenever it is made. */
function answersOf({ fault, outcome }: Bench, random: () => number) {
  const seed = Math.floor(random() * 2 ** 31);
  return (trial: Trial) => {
    const own = seededRandom(seed ^ hashOf(trial.id));
    own();
    const chances = trial.results.map((result) => chanceOf({ trial, result }, [fault], outcome));
    const result = trial.results[drawn(chances, own)];
    if (result === undefined) throw new Error(`${trial.id} has no results`);
    return result;
  };
}

function hashOf(text: string): number {
  return [...text].reduce((hash, letter) => (hash * 31 + letter.charCodeAt(0)) | 0, 7);
}

function searched(
  dictionary: Dictionary,
  { fault }: Bench,
  first: Evidence,
  answers: ReturnType<typeof answersOf>,
  next: (evidence: Evidence) => Trial | undefined,
): Search {
  let evidence = first;
  let minutes = 0;
  for (let trials = 0; ; trials++) {
    const { suspects } = suspicionOf(dictionary, evidence);
    const [suspect] = suspects;
    const named = suspect && suspect.chance >= CERTAIN_FROM ? suspect.cause : undefined;
    const trial = named === undefined && trials < TRIALS_MOST ? next(evidence) : undefined;
    if (trial === undefined) {
      const left = suspects.slice(0, 2).map(({ cause, chance }) => `${cause} ${Math.round(100 * chance)} %`);
      return { trials, minutes, named, isRight: named === fault.cause, cause: fault.cause, left };
    }
    minutes += trial.effort;
    evidence = { ...evidence, tried: [...(evidence.tried ?? []), { trial, result: answers(trial) }] };
  }
}

/** The first of those that are proposed. */
function bestOf(dictionary: Dictionary, evidence: Evidence, trials: readonly Trial[]): Trial | undefined {
  const open = weighedTrials(dictionary, evidence, trials).filter(({ risk }) => risk === undefined);
  return bestQuestion(open, LEAST_BITS)?.trial;
}

/** The first on the list that has not been made and has a meaning now, then whatever is left in its own order. */
function nextOnList(dictionary: Dictionary, evidence: Evidence, trials: readonly Trial[]): Trial | undefined {
  const open = weighedTrials(dictionary, evidence, trials)
    .filter(({ risk }) => risk === undefined)
    .map(({ trial }) => trial);
  for (const id of FIXED_ORDER) {
    const found = open.find((trial) => trial.id === id || (id === 'back:' && trial.id.startsWith(id)));
    if (found) return found;
  }
  return open[0];
}

/** Mean number of trials and minutes, and shares of benches, of a list of searches. */
export function summed(searches: readonly Search[]) {
  const mean = (value: (search: Search) => number) =>
    searches.reduce((sum, search) => sum + value(search), 0) / Math.max(1, searches.length);
  return {
    trials: mean(({ trials }) => trials),
    minutes: mean(({ minutes }) => minutes),
    right: mean(({ isRight }) => (isRight ? 1 : 0)),
    wrong: mean(({ named, isRight }) => (named !== undefined && !isRight ? 1 : 0)),
  };
}
