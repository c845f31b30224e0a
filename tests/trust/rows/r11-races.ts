import { race } from '../../faults/races';
import type { TrustRow } from '../row';

const SCHEDULES = 5_000;

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R11',
    promise:
      'Autosave against save, edit, undo, opening another file and loading again, in any order: no stale write, no edit without a copy, no other file written over',
    target: { count: SCHEDULES, what: 'schedules' },
    run: () => race(SCHEDULES, 20_261_126),
  },
];
