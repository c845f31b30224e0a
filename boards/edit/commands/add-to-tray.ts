import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { TrayPathZ, TrayPlaceZ, trayPlaces, withPlaces } from '../../document/tray-places';
import { defineCommand } from '../definition';
import { changeTray, pathRefusal, twiceIn } from '../tray';
import { manyWords, namedPath, newPlaces } from '../tray-words';

/**
 * Adds places and paths to the tray in one step; the paths may lead to the new places. Refuses an id that is
 * taken, a second supply, and a path that cannot be there.
 */
export const addToTray = defineCommand({
  name: 'add-to-tray',
  args: z.strictObject({
    places: z.array(TrayPlaceZ).max(LIMITS.trayPoints),
    paths: z.array(TrayPathZ).max(LIMITS.trayPaths),
  }),
  label: ({ case: { tray } }, { places, paths }) => {
    const [path] = paths;
    if (places.length > 0) return `Add ${newPlaces(places)}`;
    return tray && path && paths.length === 1
      ? `Add ${namedPath(tray, path)}`
      : `Add ${manyWords(paths.length, 'path', 'paths')}`;
  },
  apply: (build, { places, paths }) =>
    changeTray(build, (tray) => {
      const all = [...trayPlaces(tray), ...places];
      const place = twiceIn(all.map((each) => each.place.id));
      if (place !== undefined) return refuse({ code: 'id-taken', kind: 'place', id: place });
      if (all.filter(({ what }) => what === 'supply').length > 1) return refuse({ code: 'supply-there' });
      const path = twiceIn([...tray.paths, ...paths].map(({ id }) => id));
      if (path !== undefined) return refuse({ code: 'id-taken', kind: 'path', id: path });
      const next = { ...withPlaces(tray, all), paths: [...tray.paths, ...paths] };
      const wrong = pathRefusal(next, paths);
      return wrong === undefined ? ok(next) : refuse(wrong);
    }),
});
