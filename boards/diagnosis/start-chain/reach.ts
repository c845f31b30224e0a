import type { Moment } from '../observations/observation';
import type { EndId } from './course';

/** How far a start comes: no sign of life, a moment of it, running without its checks done, running. */
type Reach = 0 | 1 | 2 | 3;

const REACH: Readonly<Record<EndId, Reach>> = {
  'no-mains': 0,
  'no-standby': 0,
  'standby-sags': 0,
  'not-asked': 0,
  'asked-now-and-then': 3,
  'not-heard': 0,
  'no-rails': 0,
  trips: 1,
  sags: 1,
  'held-in-reset': 2,
  'no-code': 2,
  'memory-missing': 2,
  'fan-stops-it': 2,
  'fan-complained-of': 2,
  'forced-off': 1,
  'overheats-soon': 2,
  'overheats-late': 3,
  restarts: 2,
  runs: 3,
};

export function reachOf(end: EndId): Reach {
  return REACH[end];
}

/** Moments of which something shows however early a start ends. */
export const ALWAYS_SHOWN: ReadonlySet<Moment> = new Set<Moment>(['before-press', 'on-press']);
