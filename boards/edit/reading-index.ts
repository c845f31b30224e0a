import { z } from 'zod';
import { LIMITS } from '../document/limits';

/** A reading of a connector, counted from 0 in the order in which they were noted. */
export const ReadingIndexZ = z
  .int()
  .min(0)
  .max(LIMITS.readingsPerConnector - 1);
