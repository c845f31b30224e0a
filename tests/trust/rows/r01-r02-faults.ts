import { portSweep } from '../../faults/port-sweep';
import { whyNoShim } from '../../faults/shim/shim';
import { shimSweep } from '../../faults/shim-sweep';
import type { TrustRow } from '../row';

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R1',
    promise:
      'A disk that fails while saving, saving as, giving out, keeping settings, copies, sheets or reports leaves the former file whole or the next one; “saved” is said only of the next one, a refusal names file and cause, and nothing is left lying about',
    target: { count: 500, what: 'faults under the real host, once and for ever' },
    run: async () => {
      const notRun = whyNoShim();
      return notRun === null ? shimSweep(1) : { tried: 0, failures: [], notRun };
    },
  },
  {
    id: 'R2',
    promise: 'The same through the port that the host reaches all files by, so that every branch is tried',
    target: { count: 5_000, what: 'faults in process, once and for ever' },
    run: () => portSweep(1),
  },
];
