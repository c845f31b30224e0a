import { z } from 'zod';

/** What a machine may have beside its leads, as far as the order of the work depends on it. */
export const FITTED = [
  'io-plate',
  'standoffs',
  'processor',
  'memory',
  'cooler',
  /** The cooler reaches over the memory, so that the modules have to be in first. */
  'cooler-over-memory',
  'm2-drive',
  'graphics-card',
] as const;

export const FittedZ = z.enum(FITTED);
export type Fitted = z.infer<typeof FittedZ>;

/** What is assumed of a machine that says nothing of it. Common practice, no source. */
export const USUALLY_FITTED: readonly Fitted[] = ['io-plate', 'standoffs', 'processor', 'memory', 'cooler'];
