import { killSweep } from '../../faults/kill-sweep';
import { portSweep } from '../../faults/port-sweep';
import { whyNoShim } from '../../faults/shim/shim';
import { RECOVERING } from '../../faults/work/keeping';
import type { TrustRow } from '../row';

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R7',
    promise:
      'A disk that fails, and a program that is killed, while it recovers from a crash loses nothing: the copy is still there, and a broken one is never in the way',
    target: { count: 500, what: 'faults and kills on top of a broken copy' },
    run: async () => {
      const swept = await portSweep(1, RECOVERING);
      const notRun = whyNoShim();
      if (notRun !== null) return { ...swept, notRun };
      const killed = await killSweep(1, RECOVERING);
      return { tried: swept.tried + killed.tried, failures: [...swept.failures, ...killed.failures] };
    },
  },
];
