import { z } from 'zod';
import { PAPER_IDS } from '../page/paper';

/** How small and how large a label may be: below that nothing can be read on it, above a page holds too few. */
export const LABEL_SIZES = {
  widthMm: { least: 20, usual: 80, most: 120 },
  heightMm: { least: 8, usual: 16, most: 60 },
} as const;

/** A label that is stuck on flat, or one that is folded round the cable and has its words on both halves. */
const LABEL_STYLES = ['flat', 'flag'] as const;
export type LabelStyle = (typeof LABEL_STYLES)[number];

/** How labels for both ends of each cable are printed. */
export const LabelOptionsZ = z.strictObject({
  paper: z.enum(PAPER_IDS),
  widthMm: z.number().min(LABEL_SIZES.widthMm.least).max(LABEL_SIZES.widthMm.most),
  heightMm: z.number().min(LABEL_SIZES.heightMm.least).max(LABEL_SIZES.heightMm.most),
  style: z.enum(LABEL_STYLES),
});

export type LabelOptions = z.infer<typeof LabelOptionsZ>;
