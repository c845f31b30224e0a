import { race } from '../../faults/races';
import type { TrustRow } from '../row';
import { seedOfToday } from '../seed-of-today';

const SCHEDULES = 5_000;
/** Some are the same for ever, the others are new every day. */
const FIXED = { schedules: 1_000, seed: 20_261_126 };

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R11',
    promise:
      'Autosave against save, save under another name, edit, undo, closing, opening another file and loading again, in any order: no stale write, no edit without a copy, no other file written over, and a file is as it was left',
    target: { count: SCHEDULES, what: 'schedules, most of them other ones every day' },
    run: async () => {
      const fixed = await race(FIXED.schedules, FIXED.seed);
      const ofToday = await race(SCHEDULES - FIXED.schedules, seedOfToday());
      return { tried: fixed.tried + ofToday.tried, failures: [...fixed.failures, ...ofToday.failures] };
    },
  },
];
