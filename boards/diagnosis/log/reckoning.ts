import { finished } from '../../base/finished';
import type { Seat } from '../../document/build';
import type { PlugRef } from '../../document/lookup';
import type { LogEntry } from '../../document/trouble';
import type { Dictionary } from '../dictionary';
import type { CauseId } from '../faults/causes';
import type { Exclusion } from '../observations/exclusions';
import type { ObservationId } from '../observations/observations';
import { type Evidence, explainsBadly, isNoneLikeliest, steering, suspicionOf } from '../posterior';
import { type Risk, type Stop, startsHeldBack, stopsIn } from '../trials/held-back';
import { nextLooks } from '../trials/next-trials';
import { type Trial, worksNow } from '../trials/trial';
import { effectsInSteps, type LineEffect } from './effects';
import { evidenceOf, readLog, tellingLines } from './read-log';
import { type ReasonedTrial, reasonedTrialsInSteps } from './reasoned-trials';
import { type CauseReasons, type Reasons, reasonsInSteps } from './reasons';

/** One thing that may be wrong, of those that a cause stands for. */
export interface SuspectedFault {
  readonly id: string;
  readonly name: string;
  readonly chance: number;
  readonly lead?: string;
  /** Where the plug would then be, or which one would be off. */
  readonly seat?: Seat;
  readonly off?: PlugRef;
}

/** A cause that may be behind it. */
export interface Suspect {
  readonly cause: CauseId;
  readonly chance: number;
  /** The likeliest first. */
  readonly faults: readonly SuspectedFault[];
}

/** What is believed: known long before the reasons for it. */
export interface Suspects {
  /** The likeliest first; their chances, those of all pairs and that of none of these add up to 1. */
  readonly suspects: readonly Suspect[];
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
  /** What was seen or found that ends all trying. */
  readonly stops: readonly Stop[];
  /** Whether the trouble was away at the last start. */
  readonly worksNow: boolean;
}

/** What to do next. */
export interface NextDoings {
  readonly looks: readonly { readonly id: ObservationId; readonly gainBits: number }[];
  /** Those that may be made, the best first, then those that carry a risk. */
  readonly trials: readonly ReasonedTrial[];
  /** Why nothing is started now, or only what puts right what was found. */
  readonly held?: Risk;
}

/** Everything that follows from a log, as plain data: suspects with reasons, what to do next, what to stop. */
export interface Reckoning extends Suspects, NextDoings {
  readonly suspects: readonly (Suspect & Reasons)[];
  readonly effects: readonly LineEffect[];
}

/** What is told while it is reckoned: the share of the pairs of faults that is done, then one part after the other. */
export type ReckoningPart =
  | { readonly kind: 'pairs'; readonly share: number }
  | { readonly kind: 'suspects'; readonly suspects: Suspects }
  | { readonly kind: 'reasons'; readonly reasons: readonly CauseReasons[] }
  | { readonly kind: 'next'; readonly next: NextDoings }
  | { readonly kind: 'effects'; readonly effects: readonly LineEffect[] };

/** Work in small pieces, after each of which it may be dropped; null: there is nothing to tell yet. */
export type InPieces<T> = Generator<ReckoningPart | null, T>;

/** Faults that are told of one cause: a plug has many wrong places. */
const FAULTS_TOLD = 5;
const DOUBLES_TOLD = 3;

/**
 * Reckons with a log, what is waited for most first: the suspects, why, what to do next, what each line changed;
 * at last the whole. Pairs of faults are taken up only where one alone explains badly what was seen.
 *
 * @param singles what each fault would show
 * @param pairsOf the same with two faults at once; asked at most once
 */
export function* reckonInParts(
  singles: Dictionary,
  log: readonly LogEntry[],
  trials: readonly Trial[],
  pairsOf: (singles: Dictionary) => InPieces<Dictionary>,
): InPieces<Reckoning> {
  const lines = tellingLines(readLog(log, trials));
  const evidence = evidenceOf(lines.map(({ told }) => told));
  const dictionary = explainsBadly(singles, evidence) ? yield* pairsOf(singles) : singles;
  const suspects = suspectsOf(dictionary, evidence);
  yield { kind: 'suspects', suspects };
  // Reasons are told of one fault alone: among thousands of pairs nobody could follow them.
  const reasons = yield* reasonsInSteps(singles, lines);
  yield { kind: 'reasons', reasons };
  const looks = nextLooks(dictionary, evidence, trials);
  yield null;
  const mayTry = suspects.stops.length === 0;
  const held = startsHeldBack(steering({ dictionary, evidence }), evidence, trials);
  const next: NextDoings = {
    looks,
    trials: mayTry ? yield* reasonedTrialsInSteps(dictionary, evidence, trials) : [],
    ...(held && { held }),
  };
  yield { kind: 'next', next };
  const effects = yield* effectsInSteps(singles, lines);
  yield { kind: 'effects', effects };
  const whyOf = new Map(reasons.map(({ cause, ...why }) => [cause, why]));
  return {
    ...suspects,
    suspects: suspects.suspects.map((suspect) => ({
      ...suspect,
      ...(whyOf.get(suspect.cause) ?? { speaksFor: [], speaksAgainst: [], silent: [] }),
    })),
    ...next,
    effects,
  };
}

/** The same at one go. */
export function reckon(
  singles: Dictionary,
  log: readonly LogEntry[],
  trials: readonly Trial[],
  pairsOf: (singles: Dictionary) => Dictionary = (one) => one,
): Reckoning {
  // biome-ignore lint/correctness/useYield: what comes at once comes in no pieces
  const atOnce = function* (one: Dictionary): InPieces<Dictionary> {
    return pairsOf(one);
  };
  return finished(reckonInParts(singles, log, trials, atOnce));
}

function suspectsOf(dictionary: Dictionary, evidence: Required<Evidence>): Suspects {
  const suspicion = suspicionOf(dictionary, evidence);
  return {
    suspects: suspicion.suspects.map(({ cause, chance, faults }) => ({
      cause,
      chance,
      faults: faults.slice(0, FAULTS_TOLD).map(({ fault, chance: share }) => ({
        id: fault.id,
        name: fault.name,
        chance: share,
        ...(fault.lead !== undefined && { lead: fault.lead }),
        ...(fault.seat && { seat: fault.seat }),
        ...(fault.off && { off: fault.off }),
      })),
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
    stops: stopsIn(evidence),
    worksNow: worksNow(evidence),
  };
}
