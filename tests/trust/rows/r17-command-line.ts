import { commandSweep } from '../../faults/command-sweep';
import { whyNoShim } from '../../faults/shim/shim';
import type { TrustRow } from '../row';
import { runTests } from '../run-tests';

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R17',
    promise:
      'The command line never leaves part of a file, ends with a code that says what came of it, and prints the same bytes twice; one bad input does not keep the others from being read',
    target: { count: 100, what: 'faults, kills and orders' },
    run: async () => {
      const { passed, failures } = await runTests('core', ['tests/electron/cli/command-line.test.ts']);
      const notRun = whyNoShim();
      if (notRun !== null) return { tried: passed, failures, notRun };
      const swept = await commandSweep(1);
      return { tried: passed + swept.tried, failures: [...failures, ...swept.failures] };
    },
  },
];
