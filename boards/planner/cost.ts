/**
 * What an arrangement of plugs is judged by, gravest first: a lower level never makes up for a higher one.
 *
 * - `danger`: what the checks call dangerous.
 * - `essentialUnserved`: functions without which the machine does not start or overheats.
 * - `unserved`: the other functions that are not served.
 * - `unsure`: contacts on pins of which the sheet is not sure.
 * - `polarity`: parts the other way round than marked, where that can be seen or heard.
 * - `overhang`: holes past the edge of a header.
 * - `misnamed`: plugs on a header that is named for another place in the machine.
 * - `reach`: sides on which something stands close by, so that fingers do not get in.
 * - `strange`: contacts on a pin that is right and another's first choice: another job's ground.
 * - `turned`: quarter turns away from how the plug is drawn.
 * - `moved`: plugs that sit elsewhere now.
 */
export const COST_LEVELS = [
  'danger',
  'essentialUnserved',
  'unserved',
  'unsure',
  'polarity',
  'overhang',
  'misnamed',
  'reach',
  'strange',
  'turned',
  'moved',
] as const;

export type CostLevel = (typeof COST_LEVELS)[number];

/** Whole numbers from 0, one for each level. */
export type Cost = Readonly<Record<CostLevel, number>>;

export const NO_COST: Cost = Object.freeze(
  Object.fromEntries(COST_LEVELS.map((level) => [level, 0])),
) as Cost;

export function addCosts(costs: readonly Cost[]): Cost {
  return costs.reduce(
    (sum, cost) => Object.fromEntries(COST_LEVELS.map((level) => [level, sum[level] + cost[level]])) as Cost,
    NO_COST,
  );
}

/** Negative where the first is the better one, gravest level first. */
export function compareCosts(one: Cost, other: Cost): number {
  const level = COST_LEVELS.find((each) => one[each] !== other[each]);
  return level === undefined ? 0 : one[level] - other[level];
}
