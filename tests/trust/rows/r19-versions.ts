import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { versionHistories } from '../../electron/host/version-histories';
import type { TrustRow } from '../row';

const RUNS = 1_000;

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R19',
    promise:
      'What a file held before is kept apart from it, within bounds, the oldest gone first, the newest always there, and every version opens to the byte',
    target: { count: RUNS, what: 'random runs of saves' },
    run: async () => {
      const below = mkdtempSync(join(tmpdir(), 'lw-versions-'));
      try {
        return await versionHistories(below, RUNS, 19);
      } finally {
        rmSync(below, { recursive: true, force: true });
      }
    },
  },
];
