import { z } from 'zod';
import { COST_LEVELS } from '../../boards/planner/cost';

/**
 * What `leadwright plan --json` prints. Stable: within version 1 fields may be added, none removed or changed in
 * meaning.
 */
const PlugZ = z.strictObject({ lead: z.string(), plug: z.string() });
const CostZ = z.strictObject(
  Object.fromEntries(COST_LEVELS.map((level) => [level, z.int()])) as Record<
    (typeof COST_LEVELS)[number],
    z.ZodInt
  >,
);

export const PlanReportZ = z.strictObject({
  format: z.literal('leadwright/plan-report'),
  version: z.literal(1),
  file: z.string(),
  name: z.string(),
  /** How good the arrangement is and how that is known, or why there is nothing to arrange. */
  words: z.string(),
  /** Whether no arrangement is better; if not, `bound` is what none can beat. */
  proved: z.boolean(),
  /** How many arrangements there are, in decimal digits: too many for a number. */
  arrangements: z.string(),
  cost: CostZ,
  bound: CostZ,
  seats: z.array(
    z.strictObject({
      ...PlugZ.shape,
      connector: z.string(),
      at: z.tuple([z.int(), z.int()]),
      turn: z.int(),
      /** In words, which plug on which pins. */
      words: z.string(),
    }),
  ),
  /** What is to be done to get there, from the wiring in the file. */
  differences: z.array(z.strictObject({ ...PlugZ.shape, words: z.string() })),
  unserved: z.array(
    z.strictObject({
      ...PlugZ.shape,
      /** The fewest plugs that cannot all be served, this one among them. */
      conflict: z.array(PlugZ),
      words: z.string(),
      waysOut: z.array(z.strictObject({ kind: z.string(), words: z.string() })),
    }),
  ),
});

export type PlanReport = z.infer<typeof PlanReportZ>;
