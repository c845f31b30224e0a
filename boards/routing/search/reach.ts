import { byIdentity } from '../../base/by-identity';
import type { Mm } from '../../base/units';
import { type NoPassage, passageProblem } from '../fill/fill';
import type { Cable, CableKind, Laying } from '../fill/laying';
import { type FoundRoute, leastRoutes, type RouteQuery } from './least-routes';
import { toUm, trayGraph, UM_PER_MM } from './tray-graph';

/** The way of one cable through the case. */
export interface Route {
  /** Ids of paths, from the cable's first end to its second. */
  readonly paths: readonly string[];
  /** Ids of the openings it passes, in this order. */
  readonly openings: readonly string[];
  /** What of it lies on the front. */
  readonly visibleMm: Mm;
  readonly totalMm: Mm;
  /** What is left of the cable beyond its slack at both ends; below 0: by how much it is too short. */
  readonly spareMm: Mm;
}

/** An opening that does not let a cable through, and why. */
interface Barred {
  readonly opening: string;
  readonly problem: NoPassage;
}

/** Whether a cable reaches, and by which way. */
export type Reach =
  /**
   * The route with least in sight of all that leave the slack, the shortest of equals. `neater`: a route with
   * less in sight for which the cable is too short.
   */
  | { readonly kind: 'reaches'; readonly route: Route; readonly neater?: Route }
  /**
   * No route leaves the slack: the shortest of all, which says by how much, and the one with least in sight
   * for a cable as long as it takes. `ifOpen`: the route that it would have if the barred openings let it through.
   */
  | {
      readonly kind: 'too-short';
      readonly shortest: Route;
      readonly neatest: Route;
      readonly ifOpen?: Route;
      readonly barred: readonly Barred[];
    }
  /** Nothing leads from one end to the other; `ifOpen` as above, though it may be too long as well. */
  | { readonly kind: 'no-way'; readonly ifOpen?: Route; readonly barred: readonly Barred[] };

/**
 * The best way for one cable by itself, whatever other cables do.
 *
 * @throws RangeError on a cable whose ends or kind the tray does not have
 */
export function reachOf(tray: Laying, cable: Cable): Reach {
  const query = queryOf(tray, cable);
  const best = (over: Partial<RouteQuery>): Route | undefined => {
    const [found] = leastRoutes(trayGraph(tray), { ...query, ...over }).routes;
    return found && routeFrom(tray, cable, found);
  };
  const route = best({});
  const neatest = best({ budgetUm: Infinity });
  if (route !== undefined)
    return neatest === undefined || neatest.visibleMm >= route.visibleMm
      ? { kind: 'reaches', route }
      : { kind: 'reaches', route, neater: neatest };
  const barred = barredOf(tray, cable);
  const passable = tray.openings.map(() => true);
  const open = best({ passable });
  if (neatest === undefined) {
    const ifOpen = open ?? best({ passable, budgetUm: Infinity, least: 'total' });
    return { kind: 'no-way', ...(ifOpen && { ifOpen }), barred };
  }
  const shortest = best({ budgetUm: Infinity, least: 'total' }) ?? neatest;
  return { kind: 'too-short', shortest, neatest, ...(open && { ifOpen: open }), barred };
}

/** What a cable asks of the tray by itself. */
export function queryOf(tray: Laying, cable: Cable): RouteQuery {
  const { nodeOf } = trayGraph(tray);
  const [from, to] = [nodeOf.get(cable.from), nodeOf.get(cable.to)];
  if (from === undefined || to === undefined)
    throw new RangeError(`No place ${from === undefined ? cable.from : cable.to} in the tray`);
  const kind = kindOf(tray, cable);
  return {
    from,
    to,
    least: 'visible',
    budgetUm: budgetUmOf(cable, kind),
    passable: passableFor({ tray, kind }),
  };
}

/** What a cable has for its way, its slack taken off. */
function budgetUmOf({ lengthMm }: Cable, { slackMm }: CableKind): number {
  return toUm(lengthMm) - 2 * toUm(slackMm);
}

/** By place in the list of openings: whether a kind of cable goes through; asked once for each kind of a tray. */
const passableFor = byIdentity(
  ({ tray, kind }: { readonly tray: Laying; readonly kind: CableKind }): readonly boolean[] =>
    tray.openings.map((opening) => passageProblem(opening, kind, tray.behindMm) === undefined),
  ({ tray, kind }) => [tray, kind],
);

/** The kind of a cable of this tray. */
export function kindOf({ cableKinds }: Laying, cable: Cable): CableKind {
  const kind = cableKinds.find(({ id }) => id === cable.kind);
  if (kind === undefined) throw new RangeError(`No kind of cable ${cable.kind} in the tray`);
  return kind;
}

/** A found route in ids and millimetres. */
export function routeFrom(tray: Laying, cable: Cable, found: FoundRoute): Route {
  const budgetUm = budgetUmOf(cable, kindOf(tray, cable));
  const ids = (list: readonly { readonly id: string }[], places: readonly number[]) =>
    places.flatMap((at) => list[at]?.id ?? []);
  return {
    paths: ids(tray.paths, found.paths),
    openings: ids(tray.openings, found.openings),
    visibleMm: found.visibleUm / UM_PER_MM,
    totalMm: found.totalUm / UM_PER_MM,
    spareMm: (budgetUm - found.totalUm) / UM_PER_MM,
  };
}

function barredOf(tray: Laying, cable: Cable): readonly Barred[] {
  const kind = kindOf(tray, cable);
  return tray.openings.flatMap((opening) => {
    const problem = passageProblem(opening, kind, tray.behindMm);
    return problem === undefined ? [] : [{ opening: opening.id, problem }];
  });
}
