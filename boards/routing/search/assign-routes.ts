import type { Mm } from '../../base/units';
import { roomFor } from '../fill/fill';
import { OpeningLoad } from './opening-load';
import { boundOf } from './room-bound';
import { addRouteCosts, compareRouteCosts, LEFT_COST, NO_ROUTE_COST, type RouteCost } from './route-cost';
import { partsOf } from './route-parts';
import type { RouteChoice, SharedOpening, Wanting } from './wanting';

export interface Assignment {
  /** By cable: the place of its choice, or −1 for one that is left. */
  readonly choices: readonly number[];
  readonly cost: RouteCost;
  /** No assignment costs less; the cost itself where that is proved to be the least. */
  readonly bound: RouteCost;
  readonly steps: number;
}

/**
 * The choices that cost least of all that the openings have room for. Cables whose best choice takes no
 * room from another have it; the rest falls into parts that share no opening, the smallest of which is
 * searched first. Steps are counted, not time, so that the same cables always get the same answer; when
 * they run out, the best seen stands beside a bound.
 */
export function assignRoutes(
  openings: readonly SharedOpening[],
  cables: readonly Wanting[],
  mostSteps: number,
  tell: (steps: number) => void = () => undefined,
): Assignment {
  const choices = cables.map(() => 0);
  let { cost, bound, steps } = { cost: NO_ROUTE_COST, bound: NO_ROUTE_COST, steps: 0 };
  let proved = true;
  for (const places of partsOf(cables)) {
    const part = places.flatMap((place) => cables[place] ?? []);
    const before = steps;
    const found = assignPart(openings, part, mostSteps - before, (more) => tell(before + more));
    places.forEach((place, at) => {
      choices[place] = found.choices[at] ?? -1;
    });
    cost = addRouteCosts(cost, found.cost);
    bound = addRouteCosts(bound, found.bound);
    steps += found.steps;
    proved &&= compareRouteCosts(found.bound, found.cost) === 0;
  }
  return { choices, cost, bound: proved ? cost : bound, steps };
}

/**
 * One part by branch and bound, depth first, the thickest cables first. A branch is dropped when the
 * cheapest choices that each later cable still has room for, by itself, cost no less than the best seen.
 */
function assignPart(
  openings: readonly SharedOpening[],
  cables: readonly Wanting[],
  mostSteps: number,
  tell: (steps: number) => void,
): Assignment {
  // Like ones stand together, so that their choices can be asked to rise.
  const order = cables
    .map((cable, at) => ({ cable, at }))
    .sort(
      (a, b) =>
        b.cable.diameterMm - a.cable.diameterMm || compareText(a.cable.like, b.cable.like) || a.at - b.at,
    );
  const loads = openings.map(({ opening, heldMm }) => new OpeningLoad(opening, heldMm));
  const chosen = order.map(() => -1);
  let best = thinnestFirst(
    openings,
    order.map(({ cable }) => cable),
  );
  let steps = 0;
  let stopped = false;

  const hasRoom = ({ openings: wanted }: RouteChoice, diameterMm: Mm) =>
    wanted.every((at) => loads[at]?.hasRoom(diameterMm) === true);
  const leastFrom = (depth: number) => {
    let [left, visibleUm, totalUm] = [0, 0, 0];
    for (let at = depth; at < order.length; at++) {
      const cable = order[at]?.cable;
      const cost = cable?.choices.find((choice) => hasRoom(choice, cable.diameterMm))?.cost ?? LEFT_COST;
      left += cost.left;
      visibleUm += cost.visibleUm;
      totalUm += cost.totalUm;
    }
    return { left, visibleUm, totalUm };
  };
  const bound = boundOf(
    openings,
    order.map(({ cable }) => cable),
    leastFrom(0),
  );

  const branch = (depth: number, cost: RouteCost): void => {
    if (steps >= mostSteps) stopped = true;
    if (stopped) return;
    steps += 1;
    if (steps % TOLD_EVERY === 0) tell(steps);
    const item = order[depth];
    if (item === undefined) {
      if (compareRouteCosts(cost, best.cost) < 0) best = { choices: [...chosen], cost };
      return;
    }
    if (compareRouteCosts(addRouteCosts(cost, leastFrom(depth)), best.cost) >= 0) return;
    const { cable } = item;
    const isLike = depth > 0 && order[depth - 1]?.cable.like === cable.like;
    const before = isLike ? (chosen[depth - 1] ?? -1) : 0;
    // After a like one that is left there is nothing but to be left as well.
    for (let at = before < 0 ? cable.choices.length : before; at <= cable.choices.length; at++) {
      const choice = cable.choices[at];
      if (choice !== undefined && !hasRoom(choice, cable.diameterMm)) continue;
      chosen[depth] = choice === undefined ? -1 : at;
      for (const opening of choice?.openings ?? []) loads[opening]?.add(cable.diameterMm);
      branch(depth + 1, addRouteCosts(cost, choice?.cost ?? LEFT_COST));
      for (const opening of choice?.openings ?? []) loads[opening]?.remove();
      if (stopped) return;
    }
  };
  branch(0, NO_ROUTE_COST);

  const { choices: found, cost } = best;
  const choices = cables.map(() => -1);
  order.forEach(({ at }, depth) => {
    choices[at] = found[depth] ?? -1;
  });
  return { choices, cost, bound: stopped ? bound : cost, steps };
}

/**
 * Every cable's cheapest choice that there is still room for, the thinnest first: not the best, but few are
 * left, and the search begins with something to be better than.
 */
function thinnestFirst(openings: readonly SharedOpening[], thickestFirst: readonly Wanting[]) {
  const loads = openings.map(({ heldMm }) => [...heldMm]);
  const choices = thickestFirst.map(() => -1);
  let cost = NO_ROUTE_COST;
  const order = [...thickestFirst.entries()].sort(
    ([i, one], [j, other]) => one.diameterMm - other.diameterMm || i - j,
  );
  for (const [at, cable] of order) {
    const { diameterMm } = cable;
    const fits = cable.choices.findIndex((choice) =>
      choice.openings.every((place) => {
        const shared = openings[place];
        return shared !== undefined && roomFor(shared.opening, [...(loads[place] ?? []), diameterMm]);
      }),
    );
    choices[at] = fits;
    for (const place of cable.choices[fits]?.openings ?? []) loads[place]?.push(diameterMm);
    cost = addRouteCosts(cost, cable.choices[fits]?.cost ?? LEFT_COST);
  }
  return { choices, cost };
}

const TOLD_EVERY = 1_024;

function compareText(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
