import { z } from 'zod';
import { ok, type Result, refuse } from '../../base/result';
import type { Build } from '../../document/build';
import { LIMITS } from '../../document/limits';
import { leadOf, type PlugRef, samePlug } from '../../document/lookup';
import { plugName } from '../../document/names';
import { RouteZ } from '../../document/route';
import { IdZ } from '../../document/text';
import { defineCommand } from '../definition';
import { findPlug } from '../find';
import type { Refusal } from '../refusal';
import { withRoutes } from '../routes';

const RunRefZ = z.strictObject({ lead: IdZ, plug: IdZ });

/**
 * Chooses ways for any number of runs, and takes the ways of others off, as one step. A run is named by its
 * lead and the plug at its far end. Refuses as a whole where a run or a path is not there.
 */
export const layRuns = defineCommand({
  name: 'lay-runs',
  args: z.strictObject({
    routes: z.array(RouteZ).max(LIMITS.routes),
    off: z.array(RunRefZ).max(LIMITS.routes),
  }),
  label: (build, { routes, off }) => {
    const [only, ...more] = routes.length > 0 ? routes : off;
    const what = only && more.length === 0 ? plugName(build, only) : `${more.length + 1} cables`;
    return routes.length > 0 ? `Lay ${what}` : `Take the way off ${what}`;
  },
  apply: (build, { routes, off }) => {
    const named: readonly PlugRef[] = [...routes, ...off];
    const paths = new Set(build.case.tray?.paths.map(({ id }) => id));
    for (const [at, ref] of named.entries()) {
      const run = findRun(build, ref);
      if (!run.ok) return run;
      if (named.slice(0, at).some((other) => samePlug(other, ref)))
        return refuse({ code: 'plug-twice', lead: ref.lead, plug: ref.plug });
    }
    const gone = routes.flatMap((route) => route.paths.filter((path) => !paths.has(path)));
    if (gone[0] !== undefined) return refuse({ code: 'unknown-path', path: gone[0] });
    // In the order they had, so that laying a run as it lies changes nothing.
    const { routes: before = [] } = build;
    const kept = before.flatMap((was) => {
      if (off.some((ref) => samePlug(ref, was))) return [];
      return routes.find((route) => samePlug(route, was)) ?? was;
    });
    const fresh = routes.filter((route) => !before.some((was) => samePlug(was, route)));
    if (kept.length + fresh.length > LIMITS.routes)
      return refuse({ code: 'full', what: 'chosen ways', limit: LIMITS.routes });
    return ok(withRoutes(build, [...kept, ...fresh]));
  },
});

/** Refuses a plug that no run leads to. */
function findRun(build: Build, ref: PlugRef): Result<null, Refusal> {
  const plug = findPlug(build, ref);
  if (!plug.ok) return plug;
  const runs = leadOf(build, ref.lead)?.cable?.runs ?? [];
  return runs.some(({ to }) => to === ref.plug)
    ? ok(null)
    : refuse({ code: 'no-run', lead: ref.lead, plug: ref.plug });
}
