import { z } from 'zod';
import { LIMITS } from './limits';
import { IdZ } from './text';

const LengthMmZ = z.number().positive().max(20_000);

/** One piece of a cable between two of its ends, as it leaves the shop. */
const RunZ = z.strictObject({
  /** A plug of the lead; where nothing is said, the place where the lead begins. */
  from: IdZ.optional(),
  to: IdZ,
  /** Between the two plugs, or from where the lead begins. */
  lengthMm: LengthMmZ,
});

/** A lead as a thing that takes room and has to reach. */
export const CableZ = z.strictObject({
  /** Of the whole cable with its sleeve; of a flat one, of the round one with the same area. */
  diameterMm: z.number().positive().max(100),
  /** The least inside radius it may be bent to, where its maker says one. */
  bendRadiusMm: z.number().nonnegative().max(500).optional(),
  /** What has to be left over at each end of a run, so that no plug is pulled. */
  slackMm: z.number().nonnegative().max(1_000),
  /** Where its wires come from, of a lead with parts: a point, a bay or the supply of the tray. */
  start: IdZ.optional(),
  /** A plug is the far end of one run at most. A cable for two drives is a run to the first and one on to the second. */
  runs: z.array(RunZ).min(1).max(LIMITS.plugsPerLead),
});

export type Run = z.infer<typeof RunZ>;
export type LeadCable = z.infer<typeof CableZ>;
