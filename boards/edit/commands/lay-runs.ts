import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import type { Build } from '../../document/build';
import { LIMITS } from '../../document/limits';
import { leadOf, type PlugRef, plugKey } from '../../document/lookup';
import { plugName } from '../../document/names';
import { RouteZ } from '../../document/route';
import { IdZ } from '../../document/text';
import { defineCommand } from '../definition';
import { findPlugsOnce } from '../find';
import { withRoutes } from '../routes';

/**
 * Chooses ways for any number of runs, and takes the ways of others off, as one step. A run is named by its
 * lead and the plug at its far end. Refuses as a whole where a run or a path is not there.
 */
export const layRuns = defineCommand({
  name: 'lay-runs',
  args: z.strictObject({
    routes: z.array(RouteZ).max(LIMITS.routes),
    off: z.array(z.strictObject({ lead: IdZ, plug: IdZ })).max(LIMITS.routes),
  }),
  label: (build, { routes, off }) => {
    const [only, ...more] = routes.length > 0 ? routes : off;
    const what = only && more.length === 0 ? plugName(build, only) : `${more.length + 1} cables`;
    return routes.length > 0 ? `Lay ${what}` : `Take the way off ${what}`;
  },
  apply: (build, { routes, off }) => {
    const named: readonly PlugRef[] = [...routes, ...off];
    const found = findPlugsOnce(build, named);
    if (!found.ok) return found;
    const without = named.find((ref) => !hasRun(build, ref));
    if (without !== undefined) return refuse({ code: 'no-run', lead: without.lead, plug: without.plug });
    const paths = new Set(build.case.tray?.paths.map(({ id }) => id));
    const gone = routes.flatMap((route) => route.paths).find((path) => !paths.has(path));
    if (gone !== undefined) return refuse({ code: 'unknown-path', path: gone });
    // In the order they had, so that laying a run as it lies changes nothing.
    const { routes: before = [] } = build;
    const taken = new Set(off.map(plugKey));
    const next = new Map(routes.map((route) => [plugKey(route), route]));
    const kept = before.filter((was) => !taken.has(plugKey(was))).map((was) => next.get(plugKey(was)) ?? was);
    const had = new Set(before.map(plugKey));
    const fresh = routes.filter((route) => !had.has(plugKey(route)));
    if (kept.length + fresh.length > LIMITS.routes)
      return refuse({ code: 'full', what: 'chosen ways', limit: LIMITS.routes });
    return ok(withRoutes(build, [...kept, ...fresh]));
  },
});

function hasRun(build: Build, { lead, plug }: PlugRef): boolean {
  return leadOf(build, lead)?.cable?.runs.some(({ to }) => to === plug) ?? false;
}
