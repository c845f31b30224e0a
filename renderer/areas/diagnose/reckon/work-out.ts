import { type Dictionary, dictionaryOf } from '../../../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../../../boards/diagnosis/faults/as-written';
import { type InPieces, type ReckoningPart, reckonInParts } from '../../../../boards/diagnosis/log/reckoning';
import { pairsInSteps } from '../../../../boards/diagnosis/pairs';
import { trialsOf } from '../../../../boards/diagnosis/trials/trials';
import type { Build } from '../../../../boards/document/build';
import type { Prior } from '../../../../boards/document/prior';
import type { LogEntry } from '../../../../boards/document/trouble';
import type { Later } from './later';

/** What is asked of whoever reckons. */
export interface ReckonTask {
  /** Tells one asking from another: what is told bears it. */
  readonly asking: number;
  /** Tells one wiring from another; the build comes along where this wiring has not been sent before. */
  readonly wiring: number;
  readonly build?: Build;
  /** How often causes are met here, against what is usual. */
  readonly priors: readonly Prior[];
  readonly log: readonly LogEntry[];
}

/** What whoever reckons says, and to which asking. The effects of the lines come last. */
export type ReckonTold = ReckoningPart & { readonly asking: number };

/** What is kept of one wiring, as it was weighed last. */
interface Kept {
  readonly wiring: number;
  readonly build: Build;
  readonly priors: readonly Prior[];
  readonly singles: Dictionary;
  /** Begun once, and gone on with by whoever needs them next. */
  readonly pairsInWork: Generator<number, Dictionary>;
  pairs: Dictionary | null;
}

interface ReckonerSettings {
  /** Whether pairs of faults are worked out also before they are needed, while nothing is asked. */
  readonly ahead: boolean;
}

/**
 * The reckoning for one wiring after the other; of the last one what each fault would show is kept. Whatever is
 * asked ends what was asked before it: only the newest asking is told anything more.
 */
export function reckoner(
  later: Later,
  { ahead }: ReckonerSettings = { ahead: false },
): (task: ReckonTask, tell: (told: ReckonTold) => void) => void {
  let kept: Kept | null = null;
  let sent: Pick<Kept, 'wiring' | 'build'> | null = null;
  let newest: ReckonTask | null = null;

  const keptFor = ({ wiring, priors }: ReckonTask): Kept => {
    if (kept?.wiring === wiring && samePriors(kept.priors, priors)) return kept;
    if (sent?.wiring !== wiring) throw new Error(`No build came with the wiring ${wiring}`);
    // Weighed otherwise, its faults and what each would show are still known.
    const singles = dictionaryOf(faultsAsWritten({ ...sent.build, priors: [...priors] }));
    kept = { ...sent, priors, singles, pairsInWork: pairsInSteps(singles), pairs: null };
    return kept;
  };
  const reckoning = function* (task: ReckonTask): InPieces<void> {
    const now = keptFor(task);
    yield* reckonInParts(now.singles, task.log, trialsOf(now.build), () => pairsOf(now));
    if (!ahead) return;
    for (const _ of pairsOf(now)) yield null;
  };

  return (task, tell) => {
    newest = task;
    if (task.build !== undefined) sent = { wiring: task.wiring, build: task.build };
    const pieces = reckoning(task);
    const goOn = () => {
      if (newest !== task) return;
      const { done, value } = pieces.next();
      if (value) tell({ ...value, asking: task.asking });
      if (!done) later(goOn);
    };
    // Not at once: of what was asked while something was worked out only the newest counts.
    later(goOn);
  };
}

function* pairsOf(now: Kept): InPieces<Dictionary> {
  while (now.pairs === null) {
    const { done, value } = now.pairsInWork.next();
    if (done) now.pairs = value;
    else yield { kind: 'pairs', share: value };
  }
  return now.pairs;
}

/** Whether two builds of the same wiring are weighed alike. */
export function samePriors(one: readonly Prior[], other: readonly Prior[]): boolean {
  return (
    one.length === other.length &&
    one.every(({ cause, factor }, at) => cause === other[at]?.cause && factor === other[at]?.factor)
  );
}
