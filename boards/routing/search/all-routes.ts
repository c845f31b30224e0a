import type { Mm } from '../../base/units';
import { roomFor } from '../fill/fill';
import type { Cable, Laying } from '../fill/laying';
import { assignRoutes } from './assign-routes';
import { type FoundRoute, leastRoutes } from './least-routes';
import { kindOf, queryOf, type Reach, type Route, reachOf, routeFrom } from './reach';
import { addRouteCosts, compareRouteCosts, LEFT_COST, NO_ROUTE_COST, type RouteCost } from './route-cost';
import { toUm, trayGraph } from './tray-graph';
import type { Wanting } from './wanting';

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

export interface RoutesAsked {
  readonly limits?: RoutingLimits;
  /** Is told now and then how far it has come. */
  readonly tell?: (progress: RoutingProgress) => void;
  /** Ways that are not to be changed, by the id of their cable. */
  readonly pinned?: ReadonlyMap<string, Route>;
}

/** A cable that has a route by itself. */
interface Able {
  readonly at: number;
  readonly cable: Cable;
  readonly diameterMm: number;
  readonly best: FoundRoute;
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
 * Cables with a pinned way keep it, whatever it is worth, and take their room before all others.
 */
export function allRoutes(laying: Laying, asked: RoutesAsked = {}): AllRoutes {
  const { limits = ROUTING_LIMITS, tell = () => undefined, pinned = new Map() } = asked;
  const bests = laying.cables.map((cable, at) => {
    if (at % 16 === 0) tell({ stage: 'ways', done: at, of: laying.cables.length });
    return leastRoutes(trayGraph(laying), queryOf(laying, cable)).routes[0];
  });
  const able = laying.cables.flatMap((cable, at): readonly Able[] => {
    const best = pinned.has(cable.id) ? undefined : bests[at];
    return best === undefined ? [] : [{ at, cable, diameterMm: kindOf(laying, cable).diameterMm, best }];
  });
  const held = heldBy(laying, pinned);
  const contested = new Set<number>();
  let steps = 0;
  for (;;) {
    const { ways, complete } = waysOf(laying, able, contested, limits.labels);
    const before = steps;
    const found = assignRoutes(
      laying.openings.map((opening, at) => ({ opening, heldMm: held[at] ?? [] })),
      wantings(able, ways, contested),
      limits.steps - before,
      (more) => tell({ stage: 'search', branches: before + more }),
    );
    steps += found.steps;
    const taken = able.map((_, at) => ways[at]?.[found.choices[at] ?? -1]);
    const over = overfilled(laying, able, taken, held);
    if (over.length > 0) {
      for (const opening of over) contested.add(opening);
      continue;
    }
    const routes = new Map(able.map(({ at }, place) => [at, taken[place]]));
    const fixed = laying.cables.reduce((sum, { id }, at) => {
      const way = pinned.get(id);
      if (way !== undefined) return addRouteCosts(sum, costOf(way));
      return bests[at] === undefined ? addRouteCosts(sum, LEFT_COST) : sum;
    }, NO_ROUTE_COST);
    // Where ways are missing, the bound of the choice between them is none for the whole.
    const bound = complete ? found.bound : alone(ways);
    return {
      cables: laying.cables.map((cable, at): CableRoute => {
        const way = pinned.get(cable.id);
        if (way !== undefined) return { kind: 'laid', cable: cable.id, route: way };
        return cableRoute(laying, cable, bests[at], routes.get(at));
      }),
      cost: addRouteCosts(found.cost, fixed),
      bound: addRouteCosts(bound, fixed),
      proved: complete && compareRouteCosts(found.bound, found.cost) === 0,
      steps,
    };
  }
}

/**
 * For every cable its best way for each set of contested openings; at least its best way of all, which is
 * enough where it takes no room that others want.
 */
function waysOf(laying: Laying, able: readonly Able[], contested: ReadonlySet<number>, labels: number) {
  const graph = trayGraph(laying);
  const known = new Map<string, ReturnType<typeof leastRoutes>>();
  let complete = true;
  const ways = able.map(({ cable, best }) => {
    if (!best.openings.some((opening) => contested.has(opening))) return [best];
    const like = likeness(cable);
    const found = known.get(like) ?? leastRoutes(graph, { ...queryOf(laying, cable), contested, labels });
    known.set(like, found);
    complete &&= found.complete;
    return found.routes.length > 0 ? found.routes : [best];
  });
  return { ways, complete };
}

/** Equal for cables that may change places without any effect. */
function likeness({ kind, from, to, lengthMm }: Cable): string {
  return [kind, from, to, lengthMm].join(' ');
}

function wantings(
  able: readonly Able[],
  ways: readonly (readonly FoundRoute[])[],
  contested: ReadonlySet<number>,
): readonly Wanting[] {
  return able.map(({ cable, diameterMm }, at) => ({
    diameterMm,
    like: likeness(cable),
    choices: (ways[at] ?? []).map(({ visibleUm, totalUm, openings }) => ({
      cost: { left: 0, visibleUm, totalUm },
      openings: openings.filter((opening) => contested.has(opening)),
    })),
  }));
}

/** By opening: the thickness of what goes through it on a pinned way. */
function heldBy(laying: Laying, pinned: ReadonlyMap<string, Route>): readonly (readonly Mm[])[] {
  return laying.openings.map(({ id }) =>
    laying.cables.flatMap((cable) =>
      pinned.get(cable.id)?.openings.includes(id) === true ? [kindOf(laying, cable).diameterMm] : [],
    ),
  );
}

/** Openings that hold more than they have room for. */
function overfilled(
  laying: Laying,
  able: readonly Able[],
  taken: readonly (FoundRoute | undefined)[],
  held: readonly (readonly Mm[])[],
): readonly number[] {
  return laying.openings.flatMap((opening, at) => {
    const through = able.filter((_, place) => taken[place]?.openings.includes(at));
    // What pinned ways alone fill too much is not for others to make good.
    if (through.length === 0) return [];
    const own = through.map(({ diameterMm }) => diameterMm);
    return roomFor(opening, [...own, ...(held[at] ?? [])]) ? [] : [at];
  });
}

/** What every cable costs at its best, as if it were alone. */
function alone(ways: readonly (readonly FoundRoute[])[]): RouteCost {
  return ways.reduce(
    (sum, [best]) => (best === undefined ? sum : addRouteCosts(sum, { ...best, left: 0 })),
    NO_ROUTE_COST,
  );
}

function costOf({ visibleMm, totalMm }: Route): RouteCost {
  return { left: 0, visibleUm: toUm(visibleMm), totalUm: toUm(totalMm) };
}

function cableRoute(
  laying: Laying,
  cable: Cable,
  best: FoundRoute | undefined,
  taken: FoundRoute | undefined,
): CableRoute {
  if (best === undefined) return { kind: 'unreached', cable: cable.id, reach: reachOf(laying, cable) };
  if (taken === undefined)
    return { kind: 'crowded-out', cable: cable.id, alone: routeFrom(laying, cable, best) };
  return { kind: 'laid', cable: cable.id, route: routeFrom(laying, cable, taken) };
}
