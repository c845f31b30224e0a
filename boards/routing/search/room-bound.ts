import { fillLimit, openAreaMm2 } from '../fill/fill';
import { roundAreaMm2 } from '../fill/wire';
import { LEFT_COST, type RouteCost } from './route-cost';
import type { SharedOpening, Wanting } from './wanting';

/**
 * A cost that no assignment goes below, from the room of all openings together: cables that pass one on
 * every way share it, and the thinnest of them go through first. What has to be left is taken off where
 * most is in sight.
 *
 * @param least what every cable costs at its best, with all openings empty
 */
export function boundOf(
  openings: readonly SharedOpening[],
  cables: readonly Wanting[],
  least: RouteCost,
): RouteCost {
  const passing = cables.filter(
    ({ choices }) => choices.length > 0 && choices.every((choice) => choice.openings.length > 0),
  );
  const used = new Set(passing.flatMap(({ choices }) => choices.flatMap((choice) => choice.openings)));
  const areas = passing.map(({ diameterMm }) => roundAreaMm2(diameterMm)).sort((a, b) => a - b);
  const room = [...used].reduce((sum, at) => sum + roomIn(openings[at], areas), 0);
  let [through, filled] = [0, 0];
  for (const area of areas) {
    filled += area;
    if (filled > room * (1 + ROUNDING)) break;
    through += 1;
  }
  const left = passing.length - through;
  if (left <= least.left) return least;
  // Whichever are left, no more is saved than by leaving those that have most in sight.
  const bests = passing.flatMap(({ choices: [best] }) => best?.cost ?? []);
  const most = (of: (cost: RouteCost) => number) =>
    bests
      .map(of)
      .sort((a, b) => b - a)
      .slice(0, left)
      .reduce((sum, each) => sum + each, 0);
  return {
    left: left * LEFT_COST.left,
    visibleUm: least.visibleUm - most(({ visibleUm }) => visibleUm),
    totalUm: least.totalUm - most(({ totalUm }) => totalUm),
  };
}

const ROUNDING = 1e-9;

/** What an opening lets through at most: the share of three and more, unless one of the cables alone may fill more. */
function roomIn(shared: SharedOpening | undefined, areas: readonly number[]): number {
  if (shared === undefined) return 0;
  const open = openAreaMm2(shared.opening);
  const [one, more] = [open * fillLimit(1), open * fillLimit(3)];
  return areas.some((area) => area > more && area <= one * (1 + ROUNDING)) ? one : more;
}
