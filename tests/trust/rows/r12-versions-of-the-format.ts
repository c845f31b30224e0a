import { FROZEN_FILES } from '../../boards/document/frozen-files';
import type { TrustRow } from '../row';
import { tryAll } from '../run-tests';

const FILES = ['golden', 'migrate', 'round-trip'].map((name) => `tests/boards/document/${name}.test.ts`);

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R12',
    promise:
      'Files of every version of the format open, are saved as the same bytes or step by step in today’s version, and a newer one is refused by number',
    target: { count: 20, what: 'frozen files' },
    run: () => tryAll(FROZEN_FILES.length, FILES),
  },
];
