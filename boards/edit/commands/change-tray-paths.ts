import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { TrayPathZ, trayPathOf } from '../../document/tray-places';
import { defineCommand } from '../definition';
import { changeTray, pathRefusal, twiceIn } from '../tray';
import { manyWords, trayPathName } from '../tray-words';

/**
 * Writes what is known of any number of paths: length, side, ends. In one step, because paths that meet at a
 * point can only change sides together. Refuses a path that is not there, and one that cannot be so.
 */
export const changeTrayPaths = defineCommand({
  name: 'change-tray-paths',
  args: z.strictObject({ paths: z.array(TrayPathZ).min(1).max(LIMITS.trayPaths) }),
  label: ({ case: { tray } }, { paths }) => {
    const [to] = paths;
    if (to === undefined || paths.length > 1) return `Change ${manyWords(paths.length, 'path', 'paths')}`;
    const before = tray && trayPathOf(tray, to.id);
    const name = trayPathName(tray, to.id);
    if (before?.from !== to.from || before.to !== to.to) return `Change the ends of ${name}`;
    return before.side === to.side ? `Change the length of ${name}` : `Put ${name} on the ${to.side}`;
  },
  apply: (build, { paths }) =>
    changeTray(build, (tray) => {
      const changes = new Map(paths.map((path) => [path.id, path]));
      const twice = twiceIn(paths.map(({ id }) => id));
      if (twice !== undefined) return refuse({ code: 'named-twice', kind: 'path', id: twice });
      const known = new Set(tray.paths.map(({ id }) => id));
      const stranger = paths.find(({ id }) => !known.has(id));
      if (stranger !== undefined) return refuse({ code: 'unknown-path', path: stranger.id });
      const next = { ...tray, paths: tray.paths.map((path) => changes.get(path.id) ?? path) };
      const wrong = pathRefusal(next, paths);
      return wrong === undefined ? ok(next) : refuse(wrong);
    }),
});
