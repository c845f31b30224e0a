import { z } from 'zod';
import { SIDES } from './connector';
import { LIMITS } from './limits';
import { IdZ, LineZ } from './text';

/** Published board sizes with mounting holes of their own; what they are stands in the library. */
export const FORM_FACTORS = ['atx', 'micro-atx', 'mini-itx'] as const;

const SideZ = z.number().positive().max(1_000);
const PlaceMmZ = z.number().min(-1_000).max(1_000);

/** A hole for the screw that holds the board. */
const MountingHoleZ = z.strictObject({
  id: IdZ,
  /** The letter that specifications give it. */
  label: LineZ.optional(),
  /** Its centre, from the board's top left corner. */
  xMm: PlaceMmZ,
  yMm: PlaceMmZ,
  diameterMm: z.number().positive().max(50).optional(),
});

/** The edge of a board, seen from above the component side, as it is drawn. */
export const OutlineZ = z.strictObject({
  widthMm: SideZ,
  depthMm: SideZ,
  /** The published size it keeps to, where it does. A board may be smaller than its form factor allows. */
  formFactor: z.enum(FORM_FACTORS).optional(),
  /** The side with the sockets for the rear panel of the case; the top where nothing is said. */
  rear: z.enum(SIDES).optional(),
  holes: z.array(MountingHoleZ).max(LIMITS.mountingHoles).optional(),
});

export type FormFactor = (typeof FORM_FACTORS)[number];
export type MountingHole = z.infer<typeof MountingHoleZ>;
export type Outline = z.infer<typeof OutlineZ>;
