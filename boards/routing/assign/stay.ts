import type { AllotItem, AllotPlace } from './allot';

type Places = readonly (number | undefined)[];

/**
 * An allotment that weighs and costs the same with more of the items where they are now: an item goes to its own
 * place where that has room for it, or where what is there, and has no claim to it, can go where the item was.
 *
 * @param own where each item is now
 */
export function stayWhereTheyAre(
  items: readonly AllotItem[],
  rooms: readonly AllotPlace[],
  allotted: Places,
  own: Places,
): Places {
  const places = [...allotted];
  const fits = (place: number | undefined): boolean =>
    place === undefined ||
    (rooms[place] ?? []).every((room, of) => {
      const taken = items.reduce(
        (sum, { takes }, at) => sum + (places[at] === place ? (takes[of] ?? 0) : 0),
        0,
      );
      return taken <= room;
    });
  const exchange = (at: number, home: number, other: number | undefined): boolean => {
    const from = places[at];
    places[at] = home;
    if (other !== undefined) places[other] = from;
    if (fits(home) && fits(from)) return true;
    places[at] = from;
    if (other !== undefined) places[other] = home;
    return false;
  };
  const bringHome = (at: number): boolean => {
    const home = own[at];
    const from = places[at];
    const item = items[at];
    if (item === undefined || home === undefined || from === home || item.costs[home] === undefined)
      return false;
    if (from !== undefined && item.costs[home] === item.costs[from] && exchange(at, home, undefined))
      return true;
    return items.some((other, way) => {
      if (places[way] !== home || own[way] === home) return false;
      return costsAlike(item, other, from, home) && exchange(at, home, way);
    });
  };
  // Each time one more is at home than before, so this ends.
  while (items.filter((_, at) => bringHome(at)).length > 0);
  return places;
}

/** Whether the two can be in each other's place for the same; one that is left out must weigh as much as the other. */
function costsAlike(item: AllotItem, other: AllotItem, from: number | undefined, home: number): boolean {
  const [mine, theirs] = [item.costs[home], other.costs[home]];
  if (mine === undefined || theirs === undefined) return false;
  if (from === undefined) return item.weight === other.weight && mine === theirs;
  const [was, next] = [item.costs[from], other.costs[from]];
  return was !== undefined && next !== undefined && mine + next === theirs + was;
}

/** Where in a list something is by its id; undefined where it is not there. */
export function indexOf(
  list: readonly { readonly id: string }[],
  id: string | undefined,
): number | undefined {
  const at = list.findIndex((each) => each.id === id);
  return at < 0 ? undefined : at;
}
