import type { TrustRow } from '../row';
import { runTests } from '../run-tests';

const SEQUENCES = 20_000;

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R9',
    promise:
      'Any edits, up to sixty of them, undone, give the identical first build and, redone, the identical last; every build between is sound and opens as it was saved',
    target: { count: SEQUENCES, what: 'random sequences over every command' },
    run: async () => {
      const size = { LEADWRIGHT_SEQUENCES: String(SEQUENCES) };
      const { failures } = await runTests('core', ['tests/boards/edit/any-sequence.test.ts'], size);
      return { tried: SEQUENCES, failures };
    },
  },
];
