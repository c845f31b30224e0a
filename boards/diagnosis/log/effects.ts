import type { Dictionary } from '../dictionary';
import type { CauseId } from '../faults/causes';
import { causeChances } from './cause-chances';
import { evidenceOf, type TellingLine } from './read-log';

/** What a line of the log changed. */
export interface LineEffect {
  /** Its place in the log. */
  readonly at: number;
  /** Causes that were worth a thought before it, and are no more. */
  readonly ruledOut: readonly CauseId[];
  /** The likeliest cause after it, where that is another one than before. */
  readonly nowFirst?: CauseId;
}

/** A cause worth a thought, and how much of that has to be gone for it to be called ruled out. Our own judgement. */
const WORTH_A_THOUGHT = 0.02;
const RULED_OUT = 0.25;

/** What each line changed, when it was said. */
export function* effectsInSteps(
  dictionary: Dictionary,
  lines: readonly TellingLine[],
): Generator<null, readonly LineEffect[]> {
  const effects: LineEffect[] = [];
  let before = causeChances(dictionary, evidenceOf([]));
  for (const [index, { at }] of lines.entries()) {
    yield null;
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
    effects.push({ at, ruledOut, ...(changed && { nowFirst: first }) });
  }
  return effects;
}

function likeliest(chances: ReadonlyMap<CauseId, number>): CauseId | undefined {
  return [...chances].reduce<readonly [CauseId, number] | undefined>(
    (best, each) => (best === undefined || each[1] > best[1] ? each : best),
    undefined,
  )?.[0];
}
