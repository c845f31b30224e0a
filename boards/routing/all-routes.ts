import { assignRoutes, type Wanting } from './assign-routes';
import { roomFor } from './fill';
import type { Cable, Laying } from './laying';
import { type FoundRoute, leastRoutes } from './least-routes';
import { kindOf, queryOf, type Reach, type Route, reachOf, routeFrom } from './reach';
import { addRouteCosts, compareRouteCosts, LEFT_COST, NO_ROUTE_COST, type RouteCost } from './route-cost';
import { trayGraph } from './tray-graph';

/** What becomes of one cable among all. */
type CableRoute =
  | { readonly kind: 'laid'; readonly cable: string; readonly route: Route }
  /** By itself it would have a route, but other cables fill the openings. `alone` is that route. */
  | { readonly kind: 'crowded-out'; readonly cable: string; readonly alone: Route }
  /** It has no route whatever the others do. */
  | { readonly kind: 'unreached'; readonly cable: string; readonly reach: Reach };

export interface AllRoutes {
  /** In the order of the sheet. */
  readonly cables: readonly CableRoute[];
  readonly cost: RouteCost;
  /** No set of routes costs less; equal to the cost where it is proved to be the best. */
  readonly bound: RouteCost;
  readonly proved: boolean;
  readonly steps: number;
}

export interface RoutingLimits {
  /** Branches looked at, over all rounds. */
  readonly steps: number;
  /** Labels settled for one cable in one round. */
  readonly labels: number;
}

export const ROUTING_LIMITS: RoutingLimits = { steps: 20_000, labels: 50_000 };

/** How far the work has come: cables whose own best way is known, or branches of the search. */
export type RoutingProgress =
  | { readonly stage: 'ways'; readonly done: number; readonly of: number }
  | { readonly stage: 'search'; readonly branches: number };

/** A cable that has a route by itself. */
interface Able {
  readonly at: number;
  readonly cable: Cable;
  readonly diameterMm: number;
}

/**
 * Routes for all cables of a tray that the openings have room for: as many cables as can be, then as little
 * in sight as can be, then as short as can be.
 *
 * Openings are taken up one round after another. At first each cable takes its own best way; where that
 * fills an opening too much, the opening is contested, every cable is given its best way for each set of
 * contested openings, and the choice between these is searched. What a round finds costs no more than the
 * answer, so the first that overfills nothing is the best there is. Nothing is left to chance or to a clock.
 *
 * @param tell is told now and then how far it has come
 */
export function allRoutes(
  tray: Laying,
  limits: RoutingLimits = ROUTING_LIMITS,
  tell: (progress: RoutingProgress) => void = () => undefined,
): AllRoutes {
  const reaches = tray.cables.map((cable, at) => {
    if (at % 16 === 0) tell({ stage: 'ways', done: at, of: tray.cables.length });
    return reachOf(tray, cable);
  });
  const able = tray.cables.flatMap((cable, at): readonly Able[] =>
    reaches[at]?.kind === 'reaches' ? [{ at, cable, diameterMm: kindOf(tray, cable).diameterMm }] : [],
  );
  const contested = new Set<number>();
  let steps = 0;
  for (;;) {
    const { ways, complete } = waysOf(tray, able, contested, limits.labels);
    const before = steps;
    const found = assignRoutes(
      tray.openings,
      wantings(able, ways, contested),
      limits.steps - before,
      (more) => tell({ stage: 'search', branches: before + more }),
    );
    steps += found.steps;
    const taken = able.map((_, at) => ways[at]?.[found.choices[at] ?? -1]);
    const over = overfilled(tray, able, taken);
    if (over.length > 0) {
      for (const opening of over) contested.add(opening);
      continue;
    }
    const routes = new Map(able.map(({ at }, place) => [at, taken[place]]));
    const unreached = tray.cables
      .filter((_, at) => reaches[at]?.kind !== 'reaches')
      .reduce((sum) => addRouteCosts(sum, LEFT_COST), NO_ROUTE_COST);
    // Where ways are missing, the bound of the choice between them is none for the whole.
    const bound = complete ? found.bound : alone(ways);
    return {
      cables: tray.cables.map((cable, at) => cableRoute(tray, cable, reaches[at], routes.get(at))),
      cost: addRouteCosts(found.cost, unreached),
      bound: addRouteCosts(bound, unreached),
      proved: complete && compareRouteCosts(found.bound, found.cost) === 0,
      steps,
    };
  }
}

/** For every cable its best way for each set of contested openings; at least its best way of all. */
function waysOf(tray: Laying, able: readonly Able[], contested: ReadonlySet<number>, labels: number) {
  const graph = trayGraph(tray);
  let complete = true;
  const ways = able.map(({ cable }) => {
    const query = queryOf(tray, cable);
    const found = leastRoutes(graph, { ...query, contested, labels });
    complete &&= found.complete;
    return found.routes.length > 0 ? found.routes : leastRoutes(graph, query).routes;
  });
  return { ways, complete };
}

function wantings(
  able: readonly Able[],
  ways: readonly (readonly FoundRoute[])[],
  contested: ReadonlySet<number>,
): readonly Wanting[] {
  return able.map(({ cable: { kind, from, to, lengthMm }, diameterMm }, at) => ({
    diameterMm,
    like: [kind, from, to, lengthMm].join(' '),
    choices: (ways[at] ?? []).map(({ visibleUm, totalUm, openings }) => ({
      cost: { left: 0, visibleUm, totalUm },
      openings: openings.filter((opening) => contested.has(opening)),
    })),
  }));
}

/** Openings that hold more than they have room for. */
function overfilled(
  tray: Laying,
  able: readonly Able[],
  taken: readonly (FoundRoute | undefined)[],
): readonly number[] {
  return tray.openings.flatMap((opening, at) => {
    const through = able.filter((_, place) => taken[place]?.openings.includes(at));
    return roomFor(
      opening,
      through.map(({ diameterMm }) => diameterMm),
    )
      ? []
      : [at];
  });
}

/** What every cable costs at its best, as if it were alone. */
function alone(ways: readonly (readonly FoundRoute[])[]): RouteCost {
  return ways.reduce(
    (sum, [best]) => (best === undefined ? sum : addRouteCosts(sum, { ...best, left: 0 })),
    NO_ROUTE_COST,
  );
}

function cableRoute(
  tray: Laying,
  cable: Cable,
  reach: Reach | undefined,
  found: FoundRoute | undefined,
): CableRoute {
  if (reach?.kind !== 'reaches')
    return { kind: 'unreached', cable: cable.id, reach: reach ?? reachOf(tray, cable) };
  if (found === undefined) return { kind: 'crowded-out', cable: cable.id, alone: reach.route };
  return { kind: 'laid', cable: cable.id, route: routeFrom(tray, cable, found) };
}
