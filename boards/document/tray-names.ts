import type { Tray } from './tray';
import { type TrayPath, type TrayPlace, type TrayPlaceKind, trayPathOf, trayPlaceOf } from './tray-places';

/** What kinds of places are called, one of them and many. */
export const TRAY_PLACE_WORDS: Readonly<Record<TrayPlaceKind, readonly [one: string, many: string]>> = {
  point: ['point', 'points'],
  opening: ['opening', 'openings'],
  bay: ['bay', 'bays'],
  standoff: ['standoff place', 'standoff places'],
  fan: ['fan place', 'fan places'],
  supply: ['place of the supply', 'places of supplies'],
};

/** What a person calls a place of the tray: its name, or what it is with its id where it has none. */
export function trayPlaceName(tray: Tray | undefined, id: string): string {
  const found = tray && trayPlaceOf(tray, id);
  return found === undefined ? `“${id}”` : nameOfPlace(found);
}

/** The same of a place that need not be in a tray yet. */
export function nameOfPlace(each: TrayPlace): string {
  if (each.what === 'supply') return 'the supply';
  return each.place.name || `${TRAY_PLACE_WORDS[each.what][0]} ${each.place.id}`;
}

/** A path by its two ends: "the path from Lower grommet to the supply". */
export function trayPathName(tray: Tray | undefined, id: string): string {
  const path = tray && trayPathOf(tray, id);
  return path === undefined ? `the path “${id}”` : nameOfPath(tray, path);
}

/** The same of a path that need not be in the tray yet, as its places are. */
export function nameOfPath(tray: Tray | undefined, { from, to }: TrayPath): string {
  return `the path from ${trayPlaceName(tray, from)} to ${trayPlaceName(tray, to)}`;
}
