import { anySequence } from '../../boards/edit/any-sequence';
import type { TrustRow } from '../row';
import { seedOfToday } from '../seed-of-today';

const SEQUENCES = 20_000;
/** Some are the same for ever, the others are new every day. */
const FIXED = { sequences: 2_000, seed: 20_260_301 };

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R9',
    promise:
      'Any edits, up to sixty of them, undone, give the identical first build and, redone, the identical last; every build between is sound and opens as it was saved',
    target: {
      count: SEQUENCES,
      what: 'random sequences over every command, most of them other ones every day',
    },
    run: async () => {
      const fixed = anySequence(FIXED.sequences, FIXED.seed);
      const ofToday = anySequence(SEQUENCES - FIXED.sequences, seedOfToday());
      return {
        tried: fixed.tried + ofToday.tried,
        failures: [...fixed.failures, ...ofToday.failures],
      };
    },
  },
];
