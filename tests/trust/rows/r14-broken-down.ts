import type { TrustRow } from '../row';
import { runTests } from '../run-tests';

const CRASHES = 50;

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R14',
    promise:
      'A page whose process breaks down loses at most five seconds of edits, and the work is offered again; a failure of the window leaves a report with nothing private in it',
    target: { count: CRASHES, what: 'killed pages' },
    long: true,
    run: async () => {
      const size = { LEADWRIGHT_CRASHES: String(CRASHES) };
      const { passed, failures } = await runTests('e2e', ['tests/e2e/broken-down.test.ts'], size);
      // One of the tests is that of the report.
      return { tried: Math.max(0, passed + failures.length - 1), failures };
    },
  },
];
