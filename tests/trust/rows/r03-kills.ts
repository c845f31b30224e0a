import { killSweep } from '../../faults/kill-sweep';
import { whyNoShim } from '../../faults/shim/shim';
import type { TrustRow } from '../row';

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R3',
    promise:
      'A program killed before or after any file operation, or in the middle of a write, leaves the former file or the next one, and what it held is offered at the next start',
    target: { count: 500, what: 'kills of the real host' },
    run: async () => {
      const notRun = whyNoShim();
      return notRun === null ? killSweep(1) : { tried: 0, failures: [], notRun };
    },
  },
];
