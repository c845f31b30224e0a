import type { Job } from '../signals/signal';
import { jobsUnder, placementOf } from './placement';
import type { SeatedPart } from './seated-part';

/**
 * The three ways of lying on wrong pins, one of them for every part that does: its pair split between
 * functions, on pins of its own job but not the right ones, or on the pins of something else.
 */
type Astray =
  | { readonly kind: 'pair-split'; readonly jobs: readonly Job[] }
  | { readonly kind: 'wrong-pins' }
  | { readonly kind: 'wrong-function' };

/** Which of the three it is; none where a part lies right, or only the wrong way round. */
export function astrayOf(part: SeatedPart): Astray | undefined {
  if (placementOf(part) !== 'wrong') return undefined;
  const jobs = jobsUnder(part);
  if (jobs.length > 1 && part.kind.terminals.length === 2) return { kind: 'pair-split', jobs };
  return jobs.length === 1 && jobs[0] === part.kind.job ? { kind: 'wrong-pins' } : { kind: 'wrong-function' };
}
