import { z } from 'zod';
import { LIMITS } from './limits';
import { IdZ } from './text';

/**
 * The way that was chosen for one run of a cable. Only paths of the tray are named; the last stretch to a
 * connector of the board goes without saying. Something named here that the machine no longer has does no
 * harm: then the run has no chosen way.
 */
export const RouteZ = z.strictObject({
  lead: IdZ,
  /** The plug at the far end of the run. */
  plug: IdZ,
  /** From the near end to the far one. */
  paths: z.array(IdZ).max(LIMITS.pathsPerRoute),
  /** Chosen by a person, so that no search changes it. */
  pinned: z.literal(true).optional(),
});

export type ChosenRoute = z.infer<typeof RouteZ>;
