import type { TrustRow } from '../row';
import { runTests } from '../run-tests';

const FILES = ['odd-places', 'save-file'].map((name) => `tests/electron/host/${name}.test.ts`);

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R8',
    promise:
      'Read-only files and folders, vanished folders, changes outside, two windows, links, names and paths of every kind have a defined outcome, and nothing is written over in silence',
    target: { count: 20, what: 'odd places' },
    run: async () => {
      const { passed, failures } = await runTests('core', FILES);
      return { tried: passed + failures.length, failures };
    },
  },
];
