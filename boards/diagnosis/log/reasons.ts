import type { Dictionary } from '../dictionary';
import type { CauseId } from '../faults/causes';
import { causeChances } from './cause-chances';
import { evidenceOf, type TellingLine } from './read-log';

/** Places in the log of what speaks for a cause, against it, and says nothing of it. */
export interface Reasons {
  readonly speaksFor: readonly number[];
  readonly speaksAgainst: readonly number[];
  readonly silent: readonly number[];
}

export interface CauseReasons extends Reasons {
  readonly cause: CauseId;
}

/** By how much the odds of a cause have to change for a line to speak for or against it. Our own judgement. */
const SPEAKS = 1.25;

/** The reasons for every cause: all are known as soon as one is, for a line is left out for all of them at once. */
export function* reasonsInSteps(
  dictionary: Dictionary,
  lines: readonly TellingLine[],
): Generator<null, readonly CauseReasons[]> {
  const now = causeChances(dictionary, evidenceOf(lines.map(({ told }) => told)));
  const withoutEach: WithoutLine[] = [];
  for (const line of lines) {
    yield null;
    const others = lines.filter((each) => each !== line).map(({ told }) => told);
    withoutEach.push({ at: line.at, chances: causeChances(dictionary, evidenceOf(others)) });
  }
  return [...now].map(([cause, chance]) => ({ cause, ...reasonsFor(chance, withoutEach, cause) }));
}

interface WithoutLine {
  readonly at: number;
  readonly chances: ReadonlyMap<CauseId, number>;
}

/** A line speaks for a cause where the cause was less likely without it: what Bayes' rule makes of that line. */
function reasonsFor(chance: number, withoutEach: readonly WithoutLine[], cause: CauseId): Reasons {
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
