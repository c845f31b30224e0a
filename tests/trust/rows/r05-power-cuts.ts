import { powerCuts } from '../../faults/power/power-cuts';
import type { TrustRow } from '../row';

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R5',
    promise:
      'Whatever a power cut leaves of what was not flushed, files are whole, and what was said to be saved is there',
    target: { count: 300, what: 'states after every change of the disk' },
    run: () => powerCuts(1),
  },
];
