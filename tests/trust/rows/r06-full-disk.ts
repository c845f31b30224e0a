import { fullDisk, whyNoSmallDisk } from '../../faults/full-disk';
import type { TrustRow } from '../row';

const PAGE_BYTES = 4_096;
const SIZES = Array.from({ length: 50 }, (_, at) => at * PAGE_BYTES);

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R6',
    promise:
      'On a disk that is really full the former file is untouched, it is said how much room is missing, and saving works again when so much is made free',
    target: { count: SIZES.length, what: 'saves with so many pages free' },
    run: async () => {
      const notRun = whyNoSmallDisk();
      return notRun === null ? fullDisk(SIZES) : { tried: 0, failures: [], notRun };
    },
  },
];
