import type { Cell } from '../../document/grid';
import { JOBS, type Job } from '../../signals/signal';
import { signalOf } from '../../signals/signals';
import type { Said } from './meanings';
import type { Understood } from './understood';

/** A pin of the list while it is being settled. */
export interface Settling {
  readonly label: string;
  /** Where it stands; undefined where the connector has no such position. */
  readonly cell: Cell | undefined;
  readonly meant: Understood | undefined;
  readonly said: Said | undefined;
  /** Whether its word said it alone, its neighbours left no doubt, or they only make it likely. */
  readonly by: 'word' | 'neighbours' | 'guess';
}

const JOBS_BY_GROUND: ReadonlyMap<string, Job> = new Map(JOBS.map((job) => [`ground of ${job}`, job]));

export function isGroundOf(said: Said): said is `ground of ${Job}` {
  return JOBS_BY_GROUND.has(said);
}

/** The job that a pin is said to have a part in. */
export function jobOf(said: Said | undefined): Job | undefined {
  if (said === undefined || said === 'no-pin') return undefined;
  return isGroundOf(said) ? JOBS_BY_GROUND.get(said) : signalOf(said).job;
}
