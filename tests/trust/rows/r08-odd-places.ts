import type { TrustRow } from '../row';
import { tryEach } from '../run-tests';

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R8',
    promise:
      'Read-only files and folders, vanished folders, changes outside, two windows, links, names and paths of every kind have a defined outcome, and nothing is written over in silence',
    target: { count: 20, what: 'odd places' },
    run: () => tryEach(['tests/electron/host/odd-places.test.ts']),
  },
];
