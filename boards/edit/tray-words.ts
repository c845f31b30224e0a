import { listed } from '../base/listed';
import { TRAY_PLACE_WORDS } from '../document/tray-names';
import type { TrayPlace, TrayPlaceKind } from '../document/tray-places';

/** "1 path", "3 paths". */
export function manyWords(count: number, one: string, many: string): string {
  return `${count}\u00a0${count === 1 ? one : many}`;
}

/** "2 openings and 9 standoff places", in the order in which they come first. */
export function countedPlaces(places: readonly TrayPlace[]): string {
  const counts = new Map<TrayPlaceKind, number>();
  for (const { what } of places) counts.set(what, (counts.get(what) ?? 0) + 1);
  return listed([...counts].map(([what, count]) => manyWords(count, ...TRAY_PLACE_WORDS[what])));
}
