import type { Build } from '../../document/build';
import type { PlugRef } from '../../document/lookup';
import type { ChosenRoute } from '../../document/route';
import type { Laying } from '../fill/laying';
import type { AllRoutes } from '../search/all-routes';
import type { Route } from '../search/reach';
import { type AsLaid, asLaid, chosenPaths, type LaidRun } from './as-laid';

/** One run that lies otherwise when all are laid together. */
export interface RouteDifference {
  readonly run: LaidRun;
  /** As it lies now; undefined while it has no way. */
  readonly now?: Route;
  /** As it would lie; undefined where there is no room left for it. */
  readonly planned?: Route;
}

/** Ways that are not to be changed, by the id of their run: those that a person has pinned. */
export function pinnedWays({ runs }: AsLaid): ReadonlyMap<string, Route> {
  return new Map(
    runs.flatMap(({ id, state }) =>
      state.kind === 'laid' && state.pinned ? [[id, state.route] as const] : [],
    ),
  );
}

/** What all runs were laid together by, and what was found. */
export interface LaidTogether {
  readonly routes: AllRoutes;
  readonly laying: Laying;
  /** Ways that were not to be changed. */
  readonly pinned: ReadonlyMap<string, Route>;
}

/**
 * True while what was found answers for the runs as they are: they are the same on the same tray, no way was
 * let go since, and every way that was pinned since is the one that was found for it. Ways that were chosen
 * and not pinned change nothing of the question.
 */
export function stillAnswers(laid: AsLaid, { routes, laying, pinned }: LaidTogether): boolean {
  if (laid.laying !== laying) return false;
  const now = pinnedWays(laid);
  const found = new Map(
    routes.cables.flatMap((each) => (each.kind === 'laid' ? [[each.cable, each.route] as const] : [])),
  );
  return (
    [...pinned.keys()].every((id) => now.has(id)) &&
    [...now].every(([id, way]) => sameWay(found.get(id), way))
  );
}

/** What laying all runs together would change about a build, run by run. */
export function routeDifferences(build: Build, found: AllRoutes): readonly RouteDifference[] {
  const laid = asLaid(build);
  const planned = new Map(
    found.cables.map((each) => [each.cable, each.kind === 'laid' ? each.route : undefined]),
  );
  return (laid?.runs ?? []).flatMap((run): readonly RouteDifference[] => {
    if (run.cable === undefined || !planned.has(run.id)) return [];
    const now = run.state.kind === 'laid' ? run.state.route : undefined;
    const next = planned.get(run.id);
    if (sameWay(now, next)) return [];
    // What does not reach stays as a person has laid it: taking its way off would help nobody.
    if (next === undefined && now !== undefined && found.cables.some(isUnreached(run.id))) return [];
    return [{ run, ...(now && { now }), ...(next && { planned: next }) }];
  });
}

/** What the command `lay-runs` needs to take differences over. */
export function takingRoutesOver(differences: readonly RouteDifference[]): {
  readonly routes: ChosenRoute[];
  readonly off: PlugRef[];
} {
  const ref = ({ lead, run }: LaidRun) => ({ lead: lead.id, plug: run.to });
  return {
    routes: differences.flatMap(({ run, planned }) =>
      planned === undefined ? [] : [{ ...ref(run), paths: [...chosenPaths(planned)] }],
    ),
    off: differences.flatMap(({ run, planned }) => (planned === undefined ? [ref(run)] : [])),
  };
}

function isUnreached(id: string) {
  return (each: AllRoutes['cables'][number]) => each.cable === id && each.kind === 'unreached';
}

function sameWay(one: Route | undefined, other: Route | undefined): boolean {
  return one?.paths.join(' ') === other?.paths.join(' ');
}
