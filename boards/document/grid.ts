import { z } from 'zod';
import type { Mm } from '../base/units';
import { LIMITS } from './limits';
import { LabelZ } from './text';

export const CORNERS = ['top-left', 'top-right', 'bottom-left', 'bottom-right'] as const;
export const SCHEMES = ['zig-zag', 'by-row', 'by-column', 'u-shaped'] as const;

export const NumberingZ = z.discriminatedUnion('scheme', [
  z.strictObject({
    scheme: z.enum(SCHEMES),
    /** Where counting begins, as the grid is drawn unturned, seen from above. */
    from: z.enum(CORNERS),
  }),
  z.strictObject({
    scheme: z.literal('free'),
    /** One row of labels for each row of the grid; null where the grid has no position at all. */
    labels: z.array(z.array(LabelZ.nullable()).max(LIMITS.gridSide)).max(LIMITS.gridSide),
  }),
]);

const PitchZ = z.number().positive().max(50).describe('millimetres between neighbouring positions');

/** The positions of a connector or a plug: rows and columns at a pitch, and how they are counted. */
export const GridZ = z.strictObject({
  rows: z.int().min(1).max(LIMITS.gridSide),
  cols: z.int().min(1).max(LIMITS.gridSide),
  pitchMm: PitchZ,
  /** Between rows, where it differs from the pitch along a row. */
  rowPitchMm: PitchZ.optional(),
  numbering: NumberingZ,
});

export type Numbering = z.infer<typeof NumberingZ>;
export type Corner = (typeof CORNERS)[number];
export type Grid = z.infer<typeof GridZ>;

/** Row and column, counted from 0 at the top left of the unturned grid. May lie outside it. */
export type Cell = readonly [row: number, col: number];

export function rowPitchOf(grid: Grid): Mm {
  return grid.rowPitchMm ?? grid.pitchMm;
}
