import { z } from 'zod';
import { ViewZ } from '../../document/build';
import { PAPER_IDS } from '../page/paper';

/** The parts of a bench sheet after its first page, in the order in which they are printed. */
export const BENCH_PARTS = ['steps', 'close-ups', 'meter', 'list', 'cables'] as const;
export type BenchPart = (typeof BENCH_PARTS)[number];

/** How the bench sheet of a build is printed. */
export const BenchOptionsZ = z.strictObject({
  paper: z.enum(PAPER_IDS),
  ...ViewZ.shape,
  parts: z.array(z.enum(BENCH_PARTS)).min(1).max(BENCH_PARTS.length),
});

export type BenchOptions = z.infer<typeof BenchOptionsZ>;
