import { z } from 'zod';
import { LIMITS } from './limits';
import { count } from './problem/shown-value';
import { IdZ, LabelZ, LineZ } from './text';

/** The kinds of picture that a sheet holds, by their media types. */
export const PHOTO_TYPES = ['image/png', 'image/jpeg', 'image/webp'] as const;

const LEAST_SIDE_PX = 16;
const SidePxZ = z.int().min(LEAST_SIDE_PX).max(LIMITS.photoSidePx);
const PlacePxZ = z
  .number()
  .min(0)
  .max(LIMITS.photoSidePx)
  .describe('pixels from the left or the top of the picture');

/** A pin of a connector, and where it is seen in the picture. */
export const PhotoPointZ = z.strictObject({ connector: IdZ, pin: LabelZ, xPx: PlacePxZ, yPx: PlacePxZ });

/** A picture of the board: scaled down, upright, with nothing of what a camera writes beside the pixels. */
export const PhotoZ = z.strictObject({
  id: IdZ,
  title: LineZ.optional(),
  type: z.enum(PHOTO_TYPES),
  widthPx: SidePxZ,
  heightPx: SidePxZ,
  data: z
    .string()
    .min(1)
    .max(LIMITS.photoLength)
    .regex(/^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/)
    .describe(`the picture file in base64, at most ${count(LIMITS.photoLength)} letters`),
  /** Pins that somebody pointed at; the grid of their connector is laid over the picture by them. */
  points: z.array(PhotoPointZ).max(LIMITS.pointsPerPhoto),
});

export type Photo = z.infer<typeof PhotoZ>;
export type PhotoPoint = z.infer<typeof PhotoPointZ>;
