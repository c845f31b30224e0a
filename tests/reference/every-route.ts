import type { Cable, Laying } from '../../boards/routing/fill/laying';

/** A way of a cable, in millimetres, and the openings it passes. */
export interface Way {
  readonly visibleMm: number;
  readonly totalMm: number;
  readonly openings: readonly string[];
}

/**
 * Every way of a cable that comes to no place twice on the same side, by trying all of them on the sheet
 * itself: slow and obvious. An opening is passed when a way comes to it on one side and leaves on the other.
 */
export function everyWay(
  tray: Laying,
  { from, to }: Cable,
  goesThrough: (opening: string) => boolean,
): Way[] {
  const openings = new Set(tray.openings.map(({ id }) => id));
  const ends = new Set([...tray.bays.map(({ id }) => id), ...(tray.supply ? [tray.supply.id] : [])]);
  const spot = (place: string, side: string) => (openings.has(place) ? `${place} ${side}` : place);
  const ways: Way[] = [];
  walk(from, undefined, [from], { visibleMm: 0, totalMm: 0, openings: [] });
  return ways;

  function walk(place: string, side: string | undefined, seen: readonly string[], way: Way): void {
    if (place === to) {
      ways.push(way);
      return;
    }
    if (ends.has(place) && place !== from) return;
    for (const path of tray.paths) {
      if (path.from !== place && path.to !== place) continue;
      const next = path.from === place ? path.to : path.from;
      const passes = openings.has(place) && side !== path.side;
      if (passes && (!goesThrough(place) || seen.includes(spot(place, path.side)))) continue;
      const here = passes ? [...seen, spot(place, path.side)] : seen;
      if (here.includes(spot(next, path.side))) continue;
      walk(next, path.side, [...here, spot(next, path.side)], {
        visibleMm: way.visibleMm + (path.side === 'front' ? path.lengthMm : 0),
        totalMm: way.totalMm + path.lengthMm,
        openings: passes ? [...way.openings, place] : way.openings,
      });
    }
  }
}
