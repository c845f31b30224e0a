import type { LogEntry } from '../../document/trouble';
import type { Dictionary } from '../dictionary';
import type { CauseId } from '../faults/causes';
import type { ObservationId } from '../observations/observations';
import { type Suspicion, suspicionOf } from '../posterior';
import { nextLooks, nextTrials, stopsIn, weighedTrials } from '../trials/next-trials';
import type { ResultId, Trial } from '../trials/trial';
import { evidenceOf, readLog, type TellingLine, type Told, tellingLines } from './read-log';

/** One thing that may be wrong, of those that a cause stands for. */
export interface SuspectedFault {
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
  /** The likeliest first; their chances and that of none of these add up to 1. */
  readonly suspects: readonly ReasonedSuspect[];
  readonly noneOfThese: number;
  /** Said to be seen and not to be seen. */
  readonly contradicted: readonly ObservationId[];
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
/** Suspects whose reasons are told. */
const REASONED = 12;

/** Reckons with a log. What is worked out of a line costs one look at the whole dictionary. */
export function reckon(
  dictionary: Dictionary,
  log: readonly LogEntry[],
  trials: readonly Trial[],
): Reckoning {
  const lines = tellingLines(readLog(log, trials));
  const evidence = evidenceOf(lines.map(({ told }) => told));
  const suspicion = suspicionOf(dictionary, evidence);
  const withoutEach = lines.map((line) => ({
    at: line.at,
    chances: chancesOf(suspicionOf(dictionary, evidenceOf(others(lines, line)))),
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
      ...reasonsFor(chance, rank < REASONED ? withoutEach : [], cause),
    })),
    noneOfThese: suspicion.noneOfThese,
    contradicted: suspicion.contradicted,
    stops,
    looks: nextLooks(dictionary, evidence),
    trials: stops.length > 0 ? [] : reasonedTrials(dictionary, evidence, trials),
    effects: effectsOf(dictionary, lines),
    worksNow: evidence.tried.some(({ result }) => result === 'gone'),
  };
}

function others(lines: readonly TellingLine[], line: TellingLine): readonly Told[] {
  return lines.filter((each) => each !== line).map(({ told }) => told);
}

function chancesOf({ suspects }: Suspicion): ReadonlyMap<CauseId, number> {
  return new Map(suspects.map(({ cause, chance }) => [cause, chance]));
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
  evidence: ReturnType<typeof evidenceOf>,
  trials: readonly Trial[],
): readonly ReasonedTrial[] {
  const proposed = nextTrials(dictionary, evidence, trials);
  const risky = weighedTrials(dictionary, evidence, trials).filter(({ risk }) => risk !== undefined);
  return [...proposed, ...risky].map(({ trial, gainBits, effort, risk, results }) => ({
    trial: trial.id,
    gainBits,
    effort,
    ...(risk && { risk }),
    results: results.map(({ result, chance }) => {
      const tried = [...evidence.tried, { trial, result }];
      const { suspects, noneOfThese } = suspicionOf(dictionary, { ...evidence, tried });
      const [first] = suspects;
      return {
        result,
        chance,
        ...(first &&
          first.chance > noneOfThese && { believed: { cause: first.cause, chance: first.chance } }),
      };
    }),
  }));
}

/** What each line changed, when it was said. */
function effectsOf(dictionary: Dictionary, lines: readonly TellingLine[]): readonly LineEffect[] {
  let before = suspicionOf(dictionary, evidenceOf([])).suspects;
  return lines.map(({ at }, index) => {
    const tolds = lines.slice(0, index + 1).map(({ told }) => told);
    const after = suspicionOf(dictionary, evidenceOf(tolds)).suspects;
    const now = new Map(after.map(({ cause, chance }) => [cause, chance]));
    const ruledOut = before
      .filter(({ cause, chance }) => {
        return chance >= WORTH_A_THOUGHT && (now.get(cause) ?? 0) < chance * RULED_OUT;
      })
      .map(({ cause }) => cause);
    const first = after[0]?.cause;
    const changed = first !== undefined && first !== before[0]?.cause;
    before = after;
    return { at, ruledOut, ...(changed && { nowFirst: first }) };
  });
}
