import { byIdentity } from '../../base/by-identity';
import { grouped } from '../../base/grouped';
import type { Build } from '../../document/build';
import { routesOf } from '../../document/lookup';
import type { Opening } from '../../document/tray';
import { fillOf, type NoPassage, type Overfill, overfillOf, passageProblem } from '../fill/fill';
import type { Cable, Laying } from '../fill/laying';
import type { FoundRoute } from '../search/least-routes';
import { kindOf, type Route, routeFrom } from '../search/reach';
import { type Step, trayGraph } from '../search/tray-graph';
import { isStretch, runId } from './laying-ids';
import { layingOf, type NotLaid, type RunToLay } from './laying-of';

/** What has been made of one run. */
type RunState =
  /** It takes its chosen way; `route.spareMm` below 0 says by how much it is too short for it. */
  | {
      readonly kind: 'laid';
      readonly route: Route;
      readonly pinned: boolean;
      /** Openings of the way that this cable does not go through, and why. */
      readonly barred: readonly { readonly opening: string; readonly problem: NoPassage }[];
    }
  /** No way was chosen, or what was chosen leads no longer from end to end. */
  | { readonly kind: 'open'; readonly broken: boolean }
  | { readonly kind: 'not-laid'; readonly problem: NotLaid };

/** A run with what has been made of it. */
export interface LaidRun extends RunToLay {
  /** As the tray has it; undefined for one that cannot be laid yet. */
  readonly cable?: Cable;
  readonly state: RunState;
}

/** What goes through one opening. */
export interface OpeningUse {
  readonly opening: Opening;
  /** Ids of the runs. */
  readonly runs: readonly string[];
  readonly fill: number;
  /** What they do not keep to of the fill table, where there is too little room for them. */
  readonly over?: Overfill;
}

export interface AsLaid {
  readonly laying: Laying;
  readonly runs: readonly LaidRun[];
  readonly openings: readonly OpeningUse[];
}

/** The cables of a build by the ways that were chosen for them. Undefined for a case without a tray. */
export const asLaid = byIdentity(
  (build: Build): AsLaid | undefined => {
    const all = layingOf(build);
    if (all === undefined) return undefined;
    const { laying, runs, notLaid } = all;
    const cables = new Map(laying.cables.map((cable) => [cable.id, cable]));
    const chosen = new Map(routesOf(build).map((route) => [runId(route), route]));
    const laid = runs.map((run): LaidRun => {
      const problem = notLaid.get(run.id);
      const cable = cables.get(run.id);
      if (problem !== undefined || cable === undefined)
        return { ...run, state: { kind: 'not-laid', problem: problem ?? { code: 'no-start' } } };
      const way = chosen.get(run.id);
      const route = way && routeAlong(laying, cable, way.paths);
      if (route === undefined) return { ...run, cable, state: { kind: 'open', broken: way !== undefined } };
      const barred = barredOn(laying, cable, route);
      return { ...run, cable, state: { kind: 'laid', route, pinned: way?.pinned === true, barred } };
    });
    return { laying, runs: laid, openings: usesOf(laying, laid) };
  },
  (build) => [layingOf(build) ?? build.case, routesOf(build)],
);

/**
 * The route of a cable along chosen paths of the tray, with the last stretches to connectors of the board
 * found by themselves. Undefined where the paths do not lead from its one end to the other.
 */
export function routeAlong(laying: Laying, cable: Cable, paths: readonly string[]): Route | undefined {
  const { nodeOf } = trayGraph(laying);
  const start = nodeOf.get(cable.from);
  const end = nodeOf.get(cable.to);
  if (start === undefined || end === undefined) return undefined;
  const indexOf = pathIndex(laying);
  const steps = (way: Way) => trayGraph(laying).steps[way.node] ?? [];
  // Beside the chosen paths a cable only passes openings, and goes the last stretch at either end.
  const stretches = (way: Way) =>
    steps(way)
      .filter(({ path }) => isStretch(laying.paths[path]?.id ?? ''))
      .map((step) => along(way, step));
  const passing = (way: Way) => [
    way,
    ...steps(way)
      .filter(({ opening }) => opening >= 0)
      .map((step) => along(way, step)),
  ];
  const begin: Way = { node: start, visibleUm: 0, totalUm: 0, paths: [], openings: [] };
  let ways: readonly Way[] = [begin, ...stretches(begin)];
  for (const id of paths) {
    const next = indexOf.get(id);
    ways = ways.flatMap(passing).flatMap((way) =>
      steps(way)
        .filter(({ path }) => path === next)
        .map((step) => along(way, step)),
    );
  }
  const [shortest] = ways
    .flatMap(passing)
    .flatMap((way) => [way, ...stretches(way)])
    .filter(({ node }) => node === end)
    .toSorted((a, b) => a.totalUm - b.totalUm);
  return shortest && routeFrom(laying, cable, shortest);
}

/** A route that has come as far as a node. */
interface Way extends FoundRoute {
  readonly node: number;
}

function along(way: Way, { to, visibleUm, totalUm, path, opening }: Step): Way {
  return {
    node: to,
    visibleUm: way.visibleUm + visibleUm,
    totalUm: way.totalUm + totalUm,
    paths: path >= 0 ? [...way.paths, path] : way.paths,
    openings: opening >= 0 ? [...way.openings, opening] : way.openings,
  };
}

/** The paths of a route that a sheet can name: those of the tray itself. */
export function chosenPaths({ paths }: Pick<Route, 'paths'>): readonly string[] {
  return paths.filter((id) => !isStretch(id));
}

const pathIndex = byIdentity(
  (laying: Laying): ReadonlyMap<string, number> => new Map(laying.paths.map(({ id }, at) => [id, at])),
);

function barredOn(laying: Laying, cable: Cable, { openings }: Route) {
  const kind = kindOf(laying, cable);
  return laying.openings.flatMap((opening) => {
    if (!openings.includes(opening.id)) return [];
    const problem = passageProblem(opening, kind, laying.behindMm);
    return problem === undefined ? [] : [{ opening: opening.id, problem }];
  });
}

function usesOf(laying: Laying, runs: readonly LaidRun[]): readonly OpeningUse[] {
  const passing = grouped(
    runs.flatMap(({ id, cable, state }) =>
      state.kind === 'laid' && cable !== undefined
        ? state.route.openings.map((opening) => ({
            opening,
            id,
            diameterMm: kindOf(laying, cable).diameterMm,
          }))
        : [],
    ),
    ({ opening }) => opening,
  );
  return laying.openings.map((opening) => {
    const through = passing.get(opening.id) ?? [];
    const diameters = through.map(({ diameterMm }) => diameterMm);
    const over = overfillOf(opening, diameters);
    return {
      opening,
      runs: through.map(({ id }) => id),
      fill: fillOf(opening, diameters),
      ...(over && { over }),
    };
  });
}
