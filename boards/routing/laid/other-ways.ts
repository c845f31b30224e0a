import type { Cable, Laying } from '../fill/laying';
import { leastRoutes, type RouteQuery } from '../search/least-routes';
import { queryOf, type Route, routeFrom } from '../search/reach';
import { trayGraph } from '../search/tray-graph';

/** So many ways are worth a look at once. Our own judgement. */
const MOST_WAYS = 6;

/**
 * Ways of a cable to choose from, each another one: the best that it reaches by, the shortest, the one with
 * least in sight, and for each opening on the best way the best that goes by without it. Those that it reaches
 * by come first, then those with less in sight.
 */
export function waysFor(laying: Laying, cable: Cable): readonly Route[] {
  const query = queryOf(laying, cable);
  const found: Route[] = [];
  const add = (over: Partial<RouteQuery>) => {
    const [way] = leastRoutes(trayGraph(laying), { ...query, ...over }).routes;
    const route = way && routeFrom(laying, cable, way);
    const key = route?.paths.join(' ');
    if (route !== undefined && !found.some(({ paths }) => paths.join(' ') === key)) found.push(route);
    return route;
  };
  const shortest = add({ budgetUm: Infinity, least: 'total' });
  const best = add({}) ?? shortest;
  add({ budgetUm: Infinity });
  for (const opening of best?.openings ?? []) {
    const without = query.passable.map((can, at) => can && laying.openings[at]?.id !== opening);
    if (add({ passable: without }) === undefined) add({ passable: without, budgetUm: Infinity });
  }
  return found
    .toSorted(
      (a, b) =>
        Number(a.spareMm < 0) - Number(b.spareMm < 0) || a.visibleMm - b.visibleMm || a.totalMm - b.totalMm,
    )
    .slice(0, MOST_WAYS);
}
