import type { Tray } from '../../../boards/document/tray';
import { trayPlaces } from '../../../boards/document/tray-places';
import { boardPlaceFor, trayFor, trayPathFor, trayPlaceFor } from '../arbitrary-tray';
import type { Makers, Situation } from './situation';

/** The rows of commands that edit the tray of the case. */
export const TRAY_MAKERS: Makers<
  | 'begin-tray'
  | 'replace-tray'
  | 'remove-tray'
  | 'size-tray'
  | 'lay-board'
  | 'add-to-tray'
  | 'move-in-tray'
  | 'change-tray-place'
  | 'note-standoffs'
  | 'change-tray-paths'
  | 'remove-from-tray'
> = {
  'begin-tray': ({ dice }) => ({
    widthMm: 300 + dice.below(200),
    heightMm: 400,
    ...(dice.oneIn(2) && { behindMm: 22 }),
  }),
  'replace-tray': ({ dice, text }) => ({ tray: trayFor(dice, text) }),
  'remove-tray': (given) => withTray(given, () => ({})),
  'size-tray': ({ dice }) => ({
    widthMm: 300 + dice.below(200),
    heightMm: 400,
    behindMm: dice.oneIn(2) ? 20 + dice.below(10) : null,
  }),
  'lay-board': ({ dice }) => ({ board: dice.oneIn(4) ? null : boardPlaceFor(dice) }),
  'add-to-tray': (given) =>
    withTray(given, (tray) => {
      const { dice, text } = given;
      const places = Array.from({ length: 1 + dice.below(3) }, () =>
        trayPlaceFor(`place-${dice.below(100)}`, dice, text),
      );
      const path = trayPathFor(`path-${dice.below(100)}`, tray, dice);
      return { places: dice.oneIn(3) ? [] : places, paths: path === undefined ? [] : [path] };
    }),
  'move-in-tray': (given) =>
    withTray(given, (tray) => {
      const placed = trayPlaces(tray).filter(({ what }) => what !== 'fan' || given.dice.oneIn(12));
      const chosen = placed.filter(() => given.dice.oneIn(2));
      const to = (chosen.length > 0 ? chosen : placed.slice(0, 1)).map(({ place }) => ({
        place: place.id,
        xMm: given.dice.below(400),
        yMm: given.dice.below(400),
      }));
      return to.length === 0 ? undefined : { to };
    }),
  'change-tray-place': (given) =>
    withTray(given, (tray) => {
      const before = given.dice.pick(trayPlaces(tray));
      if (before === undefined) return undefined;
      for (let tries = 0; tries < 20; tries++) {
        const to = trayPlaceFor(before.place.id, given.dice, given.text);
        if (to.what === before.what || given.dice.oneIn(100)) return to;
      }
      return before;
    }),
  'note-standoffs': (given) =>
    withTray(given, ({ standoffs = [] }) => {
      const seen = standoffs.map(({ id, fixed }) => ({
        standoff: id,
        seen: given.dice.pick(['set', fixed ? 'set' : 'empty', null] as const) ?? null,
      }));
      return seen.length === 0 ? undefined : { seen };
    }),
  'change-tray-paths': (given) =>
    withTray(given, (tray) => {
      const { dice } = given;
      const path = dice.pick(tray.paths);
      if (path === undefined) return undefined;
      const length = { ...path, lengthMm: 1 + dice.below(900) };
      if (dice.oneIn(3)) return { paths: [length] };
      if (dice.oneIn(3)) return { paths: [trayPathFor(path.id, tray, dice) ?? path] };
      const side = dice.oneIn(2) ? ('front' as const) : ('back' as const);
      return { paths: tray.paths.map((each) => ({ ...each, side })) };
    }),
  'remove-from-tray': (given) =>
    withTray(given, (tray) => {
      const place = given.dice.pick(trayPlaces(tray));
      const path = given.dice.pick(tray.paths);
      const onlyPath = path !== undefined && given.dice.oneIn(2);
      if (place === undefined && path === undefined) return undefined;
      return {
        places: place === undefined || onlyPath ? [] : [place.place.id],
        paths: path === undefined ? [] : [path.id],
      };
    }),
};

function withTray<T>({ build }: Situation, make: (tray: Tray) => T): T | undefined {
  const { tray } = build.case;
  return tray && make(tray);
}
