import { fullDisk, whyNoSmallDisk } from '../../faults/full-disk';
import type { TrustRow } from '../row';

const PAGE_BYTES = 4_096;
/** Too few pages for what is saved, and some that are enough for it. */
const TOO_FEW = 50;
const SIZES = Array.from({ length: TOO_FEW + 20 }, (_, at) => at * PAGE_BYTES);

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R6',
    promise:
      'On a disk that is really full the former file is untouched, it is said how much room is missing, and saving works again when so much is made free',
    target: { count: TOO_FEW, what: 'saves with too few pages free, each with another number of them' },
    run: async () => {
      const notRun = whyNoSmallDisk();
      if (notRun !== null) return { tried: 0, failures: [], notRun };
      const { full, failures } = await fullDisk(SIZES);
      return { tried: full, failures };
    },
  },
];
