import { z } from 'zod';
import { PAPER_IDS } from '../page/paper';

/** How what was noticed and tried is printed. */
export const TroubleOptionsZ = z.strictObject({ paper: z.enum(PAPER_IDS) });

export type TroubleOptions = z.infer<typeof TroubleOptionsZ>;
