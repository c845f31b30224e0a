import { randomKills } from '../../faults/random-kills';
import type { TrustRow } from '../row';

const KILLS = 1_000;

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R4',
    promise:
      'The host, killed at random while it saves without a pause, leaves a whole file, never older than its last confirmed save (none of 1,000 says: fewer than 0.3 % at 95 %)',
    target: { count: KILLS, what: 'random kills' },
    long: true,
    run: () => randomKills(KILLS),
  },
];
