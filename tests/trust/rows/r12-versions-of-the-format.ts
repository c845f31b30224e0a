import type { TrustRow } from '../row';
import { runTests } from '../run-tests';

const FILES = ['golden', 'migrate', 'round-trip'].map((name) => `tests/boards/document/${name}.test.ts`);

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R12',
    promise:
      'Files of every version of the format open, are saved as the same bytes or step by step in today’s version, and a newer one is refused by number',
    target: { count: 20, what: 'frozen files and steps' },
    run: async () => {
      const { passed, failures } = await runTests('core', FILES);
      return { tried: passed + failures.length, failures };
    },
  },
];
