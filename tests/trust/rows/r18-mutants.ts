import { tryMutants } from '../mutation/mutants';
import type { TrustRow } from '../row';

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R18',
    promise:
      'Of small changes to the code that saves, recovers and undoes, its own tests notice 85 % in every group of modules',
    target: { count: 1_000, what: 'changed lines, words and conditions' },
    long: true,
    run: tryMutants,
  },
];
