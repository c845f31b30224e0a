import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { samePlug } from '../../document/lookup';
import { plugName } from '../../document/names';
import { IdZ } from '../../document/text';
import { defineCommand } from '../definition';
import { findPlug } from '../find';
import { chosenRoute, withRoutes } from '../routes';

/** Says that the chosen way of a run is not to be changed by any search, or that it may be again. */
export const pinRun = defineCommand({
  name: 'pin-run',
  args: z.strictObject({ lead: IdZ, plug: IdZ, pinned: z.boolean() }),
  label: (build, { pinned, ...ref }) => `${pinned ? 'Pin' : 'Unpin'} the way of ${plugName(build, ref)}`,
  apply: (build, { pinned, ...ref }) => {
    const plug = findPlug(build, ref);
    if (!plug.ok) return plug;
    if (chosenRoute(build, ref) === undefined) return refuse({ code: 'no-way-chosen', ...ref });
    const { routes = [] } = build;
    return ok(
      withRoutes(
        build,
        routes.map(({ pinned: was, ...route }) => {
          const stays = samePlug(route, ref) ? pinned : was === true;
          return stays ? { ...route, pinned: true } : route;
        }),
      ),
    );
  },
});
