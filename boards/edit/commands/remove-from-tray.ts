import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { IdZ } from '../../document/text';
import type { Tray } from '../../document/tray';
import { trayPlaces, withPlaces } from '../../document/tray-places';
import { defineCommand } from '../definition';
import { changeTray } from '../tray';
import { countedPlaces, manyWords, trayPathName, trayPlaceName } from '../tray-words';

const ArgsZ = z.strictObject({
  places: z.array(IdZ).max(LIMITS.trayPoints),
  paths: z.array(IdZ).max(LIMITS.trayPaths),
});

/** Removes places and paths from the tray in one step, and with a place every path that leads to it. */
export const removeFromTray = defineCommand({
  name: 'remove-from-tray',
  args: ArgsZ,
  label: ({ case: { tray } }, args) => (tray === undefined ? 'Remove' : labelIn(tray, args)),
  apply: (build, { places, paths }) =>
    changeTray(build, (tray) => {
      const known = new Set(trayPlaces(tray).map(({ place }) => place.id));
      const stranger = places.find((id) => !known.has(id));
      if (stranger !== undefined) return refuse({ code: 'unknown-place', place: stranger });
      const lost = new Set(paths);
      for (const { id } of tray.paths) lost.delete(id);
      const [unknown] = lost;
      if (unknown !== undefined) return refuse({ code: 'unknown-path', path: unknown });
      const gone = new Set(places);
      const kept = trayPlaces(tray).filter(({ place }) => !gone.has(place.id));
      const falling = new Set(pathsGoing(tray, { places, paths }));
      return ok({ ...withPlaces(tray, kept), paths: tray.paths.filter(({ id }) => !falling.has(id)) });
    }),
});

/** Ids of the paths named, and of those that lead to a place named. */
function pathsGoing({ paths }: Tray, args: z.output<typeof ArgsZ>): readonly string[] {
  const gone = new Set(args.places);
  const named = new Set(args.paths);
  return paths
    .filter(({ id, from, to }) => named.has(id) || gone.has(from) || gone.has(to))
    .map(({ id }) => id);
}

function labelIn(tray: Tray, args: z.output<typeof ArgsZ>): string {
  const [place] = args.places;
  const going = pathsGoing(tray, args);
  const [path] = going;
  if (place === undefined)
    return `Remove ${path && going.length === 1 ? trayPathName(tray, path) : manyWords(going.length, 'path', 'paths')}`;
  const gone = new Set(args.places);
  const name =
    gone.size === 1
      ? trayPlaceName(tray, place)
      : countedPlaces(trayPlaces(tray).filter((each) => gone.has(each.place.id)));
  return going.length === 0
    ? `Remove ${name}`
    : `Remove ${name} with ${manyWords(going.length, 'path', 'paths')}`;
}
