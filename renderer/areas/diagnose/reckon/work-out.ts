import { type Dictionary, dictionaryOf } from '../../../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../../../boards/diagnosis/faults/as-written';
import { type Reckoning, reckon } from '../../../../boards/diagnosis/log/reckoning';
import { pairsInSteps } from '../../../../boards/diagnosis/pairs';
import { trialsOf } from '../../../../boards/diagnosis/trials/trials';
import type { Build } from '../../../../boards/document/build';
import type { Prior } from '../../../../boards/document/prior';
import type { LogEntry } from '../../../../boards/document/trouble';

/** What is asked of whoever reckons. */
export interface ReckonTask {
  /** Tells one wiring from another; the build comes along where this wiring has not been sent before. */
  readonly wiring: number;
  readonly build?: Build;
  /** How often causes are met here, against what is usual. */
  readonly priors: readonly Prior[];
  readonly log: readonly LogEntry[];
}

/** What whoever reckons says: the share of the pairs that is worked out, at last the reckoning. */
export type ReckonTold =
  | { readonly kind: 'pairs'; readonly share: number }
  | { readonly kind: 'done'; readonly reckoning: Reckoning };

/** What is kept of one wiring, as it was weighed last. */
interface Kept {
  readonly wiring: number;
  readonly build: Build;
  readonly priors: readonly Prior[];
  readonly singles: Dictionary;
  pairs: Dictionary | null;
}

/** The reckoning for one wiring after the other; of the last one what each fault would show is kept. */
export function reckoner(): (task: ReckonTask, tell: (told: ReckonTold) => void) => void {
  let kept: Kept | null = null;
  return ({ wiring, build: sent, priors, log }, tell) => {
    const build = kept?.wiring === wiring ? kept.build : sent;
    if (build === undefined) throw new Error(`No build came with the wiring ${wiring}`);
    if (kept?.wiring !== wiring || !samePriors(kept.priors, priors)) {
      // Weighed otherwise, its faults and what each would show are still known.
      const singles = dictionaryOf(faultsAsWritten({ ...build, priors: [...priors] }));
      kept = { wiring, build, priors, singles, pairs: null };
    }
    const now = kept;
    const pairsOf = (singles: Dictionary) => {
      now.pairs ??= watched(pairsInSteps(singles), (share) => tell({ kind: 'pairs', share }));
      return now.pairs;
    };
    tell({ kind: 'done', reckoning: reckon(now.singles, log, trialsOf(now.build), pairsOf) });
  };
}

/** Whether two builds of the same wiring are weighed alike. */
export function samePriors(one: readonly Prior[], other: readonly Prior[]): boolean {
  return (
    one.length === other.length &&
    one.every(({ cause, factor }, at) => cause === other[at]?.cause && factor === other[at]?.factor)
  );
}

/** What comes of work that is handed out in pieces, each share of it told. */
function watched<T>(steps: Generator<number, T>, tell: (share: number) => void): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    tell(value);
  }
}
