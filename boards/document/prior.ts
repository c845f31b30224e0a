import { z } from 'zod';
import { CodeZ } from './text';

/** Beyond these a factor is rather a yes or a no, which is for what was seen to say. */
export const FACTOR = { least: 0.01, most: 100 } as const;

/** How often a cause of trouble is met at this bench, against what is usual: 3 is three times as often. */
export const PriorZ = z.strictObject({
  /** A cause that a later version no longer has does no harm. */
  cause: CodeZ,
  factor: z.number().min(FACTOR.least).max(FACTOR.most),
});

export type Prior = z.infer<typeof PriorZ>;

/** How often a cause is met that counts so many times as often as is usual: "much less often", "as usual". */
export function oftenWords(factor: number): string {
  if (factor === 1) return 'as usual';
  const often = factor > 1 ? 'more often' : 'less often';
  return factor >= 10 || factor <= 0.1 ? `much ${often}` : often;
}
