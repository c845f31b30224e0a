import { z } from 'zod';
import { ViewZ } from '../document/build';
import { BenchOptionsZ } from './bench-sheet/options';
import { LabelOptionsZ } from './cables/label-options';
import { PinoutOptionsZ } from './pinout/options';
import { TroubleOptionsZ } from './trouble-sheet/options';

/** Lists that are written as values for a spreadsheet: every wire end, every cable. */
export const LISTS = ['from-to', 'cables'] as const;
export type ListKind = (typeof LISTS)[number];

/** The kinds of file that a paper can be made as. */
export const PAPER_FORMATS = ['pdf', 'svg', 'png'] as const;
export type PaperFormat = (typeof PAPER_FORMATS)[number];

/** How large a picture may be asked for; 1 is 96 pixels an inch. */
export const SCALES = { least: 0.25, usual: 2, most: 8 } as const;

/** What is printed: a board's pinout, the bench sheet of a build, its trouble sheet, or one header by itself. */
export const PrintZ = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('pinout'), options: PinoutOptionsZ }),
  z.strictObject({ kind: z.literal('bench-sheet'), options: BenchOptionsZ }),
  z.strictObject({ kind: z.literal('trouble-sheet'), options: TroubleOptionsZ }),
  z.strictObject({ kind: z.literal('labels'), options: LabelOptionsZ }),
  z.strictObject({
    kind: z.literal('header'),
    options: z.strictObject({ ...ViewZ.shape, connector: z.string().max(64) }),
  }),
]);

export type Print = z.infer<typeof PrintZ>;
