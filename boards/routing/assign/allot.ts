/** What is given a place: a drive, a fan. All numbers are whole and from 0. */
export interface AllotItem {
  /** What it takes of each resource of its place. */
  readonly takes: readonly number[];
  /** The cost at each place, in the order of the places; undefined where it cannot go. */
  readonly costs: readonly (number | undefined)[];
  /** How much it counts if it gets no place; no sum of costs makes up for it. */
  readonly weight: number;
}

/** A place, by what it has of each resource; Infinity where that is nothing to ask of it. */
export type AllotPlace = readonly number[];

/** The place of each item, undefined for those left out. `proven`: nothing weighs and costs less. */
interface Allotment {
  readonly places: readonly (number | undefined)[];
  readonly leftOut: number;
  readonly cost: number;
  readonly proven: boolean;
}

/** Branches looked at before the best one seen is given as not proven, where there are no more than so many places. */
const MOST_STEPS = 200_000;
/** A step goes over all places: with more of them there are as many fewer steps. */
const PLACES_OF_FULL_STEPS = 16;

interface Branch {
  readonly place: number | undefined;
  readonly cost: number;
}

/**
 * A place for each item with nothing taken that a place does not have: the least weight left out, and then
 * the least cost. Branch and bound that never goes on twice from places with as much left. The same
 * question always has the same answer.
 */
export function allot(items: readonly AllotItem[], places: readonly AllotPlace[]): Allotment {
  const dearest = items.reduce((sum, { costs }) => sum + Math.max(0, ...costs.map((cost) => cost ?? 0)), 0);
  const outWeighs = dearest + 1;
  const order = items
    .map((item, at) => ({ item, at, branches: branchesOf(item, outWeighs) }))
    .toSorted((a, b) => a.branches.length - b.branches.length || a.at - b.at);
  const rest = leastFrom(order.map(({ branches }) => branches));
  const alike = likenesses(items, places);
  const left = places.map((place) => [...place]);
  const chosen: (number | undefined)[] = items.map(() => undefined);
  const seen = order.map(() => new Map<string, number>());
  const mostSteps = MOST_STEPS / Math.max(1, places.length / PLACES_OF_FULL_STEPS);
  let best = { places: [...chosen], total: Infinity };
  let steps = 0;

  const go = (depth: number, total: number): void => {
    if (total + (rest[depth] ?? 0) >= best.total) return;
    const here = order[depth];
    if (here === undefined) {
      best = { places: [...chosen], total };
      return;
    }
    // The first way down is always gone to its end, so that there is an answer.
    if (++steps > mostSteps && best.total < Infinity) return;
    const state = stateOf(left, alike);
    const before = seen[depth]?.get(state);
    if (before !== undefined && before <= total) return;
    seen[depth]?.set(state, total);
    for (const { place, cost } of here.branches) {
      const room = place === undefined ? [] : (left[place] ?? []);
      if (here.item.takes.some((amount, of) => place !== undefined && amount > (room[of] ?? 0))) continue;
      take(room, here.item.takes, -1);
      chosen[here.at] = place;
      go(depth + 1, total + cost);
      take(room, here.item.takes, 1);
    }
    chosen[here.at] = undefined;
  };
  go(0, 0);
  return {
    places: best.places,
    leftOut: Math.floor(best.total / outWeighs),
    cost: best.total % outWeighs,
    proven: steps <= mostSteps,
  };
}

/** Cheapest first; to be left out last. */
function branchesOf({ costs, weight }: AllotItem, outWeighs: number): readonly Branch[] {
  const branches = costs.flatMap((cost, place): Branch[] => (cost === undefined ? [] : [{ place, cost }]));
  return [...branches.toSorted((a, b) => a.cost - b.cost), { place: undefined, cost: weight * outWeighs }];
}

/** What all items from each one on cost at least, were every place free. */
function leastFrom(branches: readonly (readonly Branch[])[]): readonly number[] {
  const least = new Array<number>(branches.length + 1).fill(0);
  for (let at = branches.length - 1; at >= 0; at--)
    least[at] = (least[at + 1] ?? 0) + Math.min(...(branches[at] ?? []).map(({ cost }) => cost));
  return least;
}

/** Places that cost every item the same may change places: one number for all of them. */
function likenesses(items: readonly AllotItem[], places: readonly AllotPlace[]): readonly number[] {
  const all = places.map((_, at) => items.map(({ costs }) => costs[at] ?? '-').join());
  const numbers = new Map([...new Set(all)].map((likeness, number) => [likeness, number]));
  return all.map((likeness) => numbers.get(likeness) ?? -1);
}

function stateOf(left: readonly (readonly number[])[], alike: readonly number[]): string {
  return left
    .map((room, at) => `${alike[at]}:${room.join()}`)
    .toSorted()
    .join(';');
}

function take(room: number[], amounts: readonly number[], sign: 1 | -1): void {
  amounts.forEach((amount, of) => {
    if (of < room.length) room[of] = (room[of] ?? 0) + sign * amount;
  });
}
