import { listed } from '../base/listed';
import { pathName, placeName } from '../document/place-names';
import type { Tray } from '../document/tray';
import {
  type PlaceKind,
  type TrayPath,
  type TrayPlace,
  trayPathOf,
  trayPlaceOf,
} from '../document/tray-places';

/** What kinds of places are called in the undo list, one of them and many. */
const KIND_WORDS: Readonly<Record<PlaceKind, readonly [one: string, many: string]>> = {
  point: ['point', 'points'],
  opening: ['opening', 'openings'],
  bay: ['bay', 'bays'],
  supply: ['supply unit', 'supply units'],
  standoff: ['standoff', 'standoffs'],
  fan: ['fan', 'fans'],
};

/** "1 path", "3 paths". */
export function manyWords(count: number, one: string, many: string): string {
  return `${count}\u00a0${count === 1 ? one : many}`;
}

/** "2 openings and 9 standoffs", in the order in which they come first. */
export function countedPlaces(places: readonly TrayPlace[]): string {
  const counts = new Map<PlaceKind, number>();
  for (const { what } of places) counts.set(what, (counts.get(what) ?? 0) + 1);
  return listed([...counts].map(([what, count]) => manyWords(count, ...KIND_WORDS[what])));
}

/** Places that are not in the tray yet: one by its name where it has one, otherwise how many of each kind. */
export function newPlaces(places: readonly TrayPlace[]): string {
  const [only] = places;
  const name = only && only.what !== 'supply' ? only.place.name : undefined;
  return places.length === 1 && name ? name : countedPlaces(places);
}

/** What a person calls a place of the tray; its id in quotes where it is not there. */
export function trayPlaceName(tray: Tray | undefined, id: string): string {
  return tray === undefined || trayPlaceOf(tray, id) === undefined ? `“${id}”` : placeName(tray, id);
}

/** "the path from Lower grommet to supply unit". */
export function trayPathName(tray: Tray | undefined, id: string): string {
  const path = tray && trayPathOf(tray, id);
  return tray === undefined || path === undefined ? `the path “${id}”` : namedPath(tray, path);
}

/** The same of a path that is not in the tray yet. */
export function namedPath(tray: Tray, { from, to }: Pick<TrayPath, 'from' | 'to'>): string {
  return `the path from ${pathName(tray, { from, to })}`;
}
