import { randomKills } from '../../faults/random-kills';
import type { TrustRow } from '../row';

const KILLS = 1_000;

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R4',
    promise:
      'The host in a process of its own, killed at random (SIGKILL) while a robot edits, has copies kept and saves without a pause, leaves a whole file, never older than its last confirmed save, and offers whole what was last confirmed to be kept (none of 1,000 says: fewer than 0.3 % at 95 %)',
    target: { count: KILLS, what: 'random kills of the host' },
    long: true,
    run: () => randomKills(KILLS),
  },
];
