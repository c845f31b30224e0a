import type { LogEntry } from '../../document/trouble';
import type { Dictionary } from '../dictionary';
import type { CauseId } from '../faults/causes';
import type { Exclusion } from '../observations/exclusions';
import type { ObservationId } from '../observations/observations';
import {
  type Evidence,
  explainsBadly,
  isNoneLikeliest,
  type Standing,
  standingOf,
  steering,
  suspicionOf,
} from '../posterior';
import { nextLooks, nextTrials, type ProposedTrial, stopsIn, weighedTrials } from '../trials/next-trials';
import type { ResultId, Trial } from '../trials/trial';
import { after } from '../trials/weigh';
import { evidenceOf, readLog, type TellingLine, type Told, tellingLines } from './read-log';

/** One thing that may be wrong, of those that a cause stands for. */
interface SuspectedFault {
  readonly id: string;
  readonly name: string;
  readonly chance: number;
  readonly lead?: string;
}

/** A cause with its reasons: places in the log of what speaks for it, against it, and says nothing of it. */
export interface ReasonedSuspect {
  readonly cause: CauseId;
  readonly chance: number;
  /** The likeliest first. */
  readonly faults: readonly SuspectedFault[];
  readonly speaksFor: readonly number[];
  readonly speaksAgainst: readonly number[];
  readonly silent: readonly number[];
}

/** A trial that may be made next, and what each of its results would say. */
export interface ReasonedTrial {
  /** The id of the trial. */
  readonly trial: string;
  readonly gainBits: number;
  readonly effort: number;
  /** Why it must not be made now. */
  readonly risk?: 'stop' | 'may-burn';
  readonly results: readonly {
    readonly result: ResultId;
    readonly chance: number;
    /** What would be believed most then; undefined: none of these. */
    readonly believed?: { readonly cause: CauseId; readonly chance: number };
  }[];
}

/** What a line of the log changed. */
export interface LineEffect {
  /** Its place in the log. */
  readonly at: number;
  /** Causes that were worth a thought before it, and are no more. */
  readonly ruledOut: readonly CauseId[];
  /** The likeliest cause after it, where that is another one than before. */
  readonly nowFirst?: CauseId;
}

/** Everything that follows from a log, as plain data: suspects with reasons, what to do next, what to stop. */
export interface Reckoning {
  /** The likeliest first; their chances, those of all pairs and that of none of these add up to 1. */
  readonly suspects: readonly ReasonedSuspect[];
  /** Two at once, the likeliest first; only where one alone explains badly what was seen. */
  readonly doubles: readonly {
    readonly causes: readonly [CauseId, CauseId];
    readonly chance: number;
    /** What is wrong with either, as sentences. */
    readonly names: readonly [string, string];
  }[];
  readonly noneOfThese: number;
  /** Whether none of these is likelier than any of them. */
  readonly noneLikeliest: boolean;
  /** Said to be seen and not to be seen. */
  readonly contradicted: readonly ObservationId[];
  /** Both said to be seen, and no machine shows both. */
  readonly excluding: readonly Exclusion[];
  /** What was seen that ends all trying. */
  readonly stops: readonly ObservationId[];
  readonly looks: readonly { readonly id: ObservationId; readonly gainBits: number }[];
  /** Those that may be made, the best first, then those that carry a risk. */
  readonly trials: readonly ReasonedTrial[];
  readonly effects: readonly LineEffect[];
  /** Whether a trial made the trouble go away. */
  readonly worksNow: boolean;
}

/** Faults that are told of one cause: a plug has many wrong places. */
const FAULTS_TOLD = 5;
/** By how much the odds of a cause have to change for a line to speak for or against it. Our own judgement. */
const SPEAKS = 1.25;
/** A cause worth a thought, and how much of that has to be gone for it to be called ruled out. Our own judgement. */
const WORTH_A_THOUGHT = 0.02;
const RULED_OUT = 0.25;
/** Suspects whose reasons are told, and pairs that are told at all. */
const REASONED = 12;
const DOUBLES_TOLD = 3;

/**
 * Reckons with a log. Pairs of faults are taken up only where one alone explains badly what was seen.
 *
 * @param singles what each fault would show
 * @param pairsOf the same with two faults at once; asked at most once
 */
export function reckon(
  singles: Dictionary,
  log: readonly LogEntry[],
  trials: readonly Trial[],
  pairsOf: (singles: Dictionary) => Dictionary = (one) => one,
): Reckoning {
  const lines = tellingLines(readLog(log, trials));
  const evidence = evidenceOf(lines.map(({ told }) => told));
  const dictionary = explainsBadly(singles, evidence) ? pairsOf(singles) : singles;
  const suspicion = suspicionOf(dictionary, evidence);
  // Reasons are told of one fault alone: among thousands of pairs nobody could follow them.
  const alone = causeChances(singles, evidence);
  const withoutEach = lines.map((line) => ({
    at: line.at,
    chances: causeChances(singles, evidenceOf(others(lines, line))),
  }));
  const stops = stopsIn(evidence);
  return {
    suspects: suspicion.suspects.map(({ cause, chance, faults }, rank) => ({
      cause,
      chance,
      faults: faults.slice(0, FAULTS_TOLD).map(({ fault, chance: share }) => ({
        id: fault.id,
        name: fault.name,
        chance: share,
        ...(fault.lead !== undefined && { lead: fault.lead }),
      })),
      ...reasonsFor(alone.get(cause) ?? 0, rank < REASONED ? withoutEach : [], cause),
    })),
    doubles: suspicion.doubles.slice(0, DOUBLES_TOLD).map(({ causes, chance, faults: [one, other] }) => ({
      causes,
      chance,
      names: [one.name, other.name],
    })),
    noneOfThese: suspicion.noneOfThese,
    noneLikeliest: isNoneLikeliest(suspicion),
    contradicted: suspicion.contradicted,
    excluding: suspicion.excluding,
    stops,
    looks: nextLooks(dictionary, evidence),
    trials: stops.length > 0 ? [] : reasonedTrials(dictionary, evidence, trials),
    effects: effectsOf(singles, lines),
    worksNow: evidence.tried.some(({ result }) => result === 'gone'),
  };
}

function others(lines: readonly TellingLine[], line: TellingLine): readonly Told[] {
  return lines.filter((each) => each !== line).map(({ told }) => told);
}

/** The chance of each cause alone. */
function causeChances(dictionary: Dictionary, evidence: Evidence): ReadonlyMap<CauseId, number> {
  return chancesBy(dictionary.hypotheses, standingOf({ dictionary, evidence }));
}

function chancesBy(
  hypotheses: Dictionary['hypotheses'],
  { chances }: Pick<Standing, 'chances'>,
): ReadonlyMap<CauseId, number> {
  const sums = new Map<CauseId, number>();
  hypotheses.forEach(({ faults: [first, second] }, at) => {
    if (first && !second) sums.set(first.cause, (sums.get(first.cause) ?? 0) + (chances[at] ?? 0));
  });
  return sums;
}

interface WithoutLine {
  readonly at: number;
  readonly chances: ReadonlyMap<CauseId, number>;
}

/** A line speaks for a cause where the cause was less likely without it: what Bayes' rule makes of that line. */
function reasonsFor(chance: number, withoutEach: readonly WithoutLine[], cause: CauseId) {
  const speaksFor: number[] = [];
  const speaksAgainst: number[] = [];
  const silent: number[] = [];
  for (const { at, chances } of withoutEach) {
    const factor = oddsOf(chance) / oddsOf(chances.get(cause) ?? 0);
    (factor > SPEAKS ? speaksFor : factor < 1 / SPEAKS ? speaksAgainst : silent).push(at);
  }
  return { speaksFor, speaksAgainst, silent };
}

const LEAST = 1e-9;

function oddsOf(chance: number): number {
  const within = Math.min(1 - LEAST, Math.max(LEAST, chance));
  return within / (1 - within);
}

function reasonedTrials(
  dictionary: Dictionary,
  evidence: Required<Evidence>,
  trials: readonly Trial[],
): readonly ReasonedTrial[] {
  const proposed = nextTrials(dictionary, evidence, trials);
  const risky = weighedTrials(dictionary, evidence, trials).filter(({ risk }) => risk !== undefined);
  return [...proposed, ...risky].map((each) => {
    const { trial, gainBits, effort, risk, results } = each;
    return {
      trial: trial.id,
      gainBits,
      effort,
      ...(risk && { risk }),
      results: results.map(({ result, chance }) => {
        const believed = likeliestAfter(dictionary, evidence, each, result);
        return { result, chance, ...(believed && { believed }) };
      }),
    };
  });
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

/** What each line changed, when it was said. */
function effectsOf(dictionary: Dictionary, lines: readonly TellingLine[]): readonly LineEffect[] {
  let before = causeChances(dictionary, evidenceOf([]));
  return lines.map(({ at }, index) => {
    const tolds = lines.slice(0, index + 1).map(({ told }) => told);
    const now = causeChances(dictionary, evidenceOf(tolds));
    const ruledOut = [...before]
      .filter(([cause, chance]) => {
        return chance >= WORTH_A_THOUGHT && (now.get(cause) ?? 0) < chance * RULED_OUT;
      })
      .sort(([, a], [, b]) => b - a)
      .map(([cause]) => cause);
    const first = likeliest(now);
    const changed = first !== undefined && first !== likeliest(before);
    before = now;
    return { at, ruledOut, ...(changed && { nowFirst: first }) };
  });
}

function likeliest(chances: ReadonlyMap<CauseId, number>): CauseId | undefined {
  return [...chances].reduce<readonly [CauseId, number] | undefined>(
    (best, each) => (best === undefined || each[1] > best[1] ? each : best),
    undefined,
  )?.[0];
}
