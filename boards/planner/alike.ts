import type { Packed } from './packed';

const NONE = -1;

/** Slots of a component that may change places with each other, and which of their choices exclude which. */
export interface Alike {
  /** By slot: the one before it that it may change places with, or -1. */
  readonly before: Int32Array;
  /**
   * By slot and place in its list: the clique of the choice, or -1 where any number of slots may have it. Two
   * choices of one clique are never taken by two slots of a kind. Numbers are not shared between kinds.
   */
  readonly cliques: readonly Int32Array[];
  readonly cliqueCount: number;
}

/** Finds the slots of a kind and parts their choices greedily into cliques of clashes. */
export function alikeIn(
  { likeOf, clashesOf }: Packed,
  slots: readonly number[],
  choices: readonly Int32Array[],
): Alike {
  const names = slots.map((slot) => likeOf[slot] ?? NONE);
  const before = Int32Array.from(names, (name, slot) =>
    name === NONE || slot === 0 ? NONE : names.lastIndexOf(name, slot - 1),
  );
  let cliqueCount = 0;
  const cliques: Int32Array[] = [];
  names.forEach((name, slot) => {
    const own = choices[slot] ?? new Int32Array();
    const other = choices[names.findIndex((each, at) => each === name && at !== slot)];
    const known = cliques[before[slot] ?? NONE];
    if (known) cliques.push(known);
    else if (name === NONE || other === undefined) cliques.push(new Int32Array(own.length).fill(NONE));
    else {
      const clash = own.reduce(
        (all, choice) => all.set(choice, new Set(clashesOf[choice])),
        new Map<number, Set<number>>(),
      );
      const { of, count } = partition(
        own.length,
        (place, against) => clash.get(own[place] ?? NONE)?.has(other[against] ?? NONE) === true,
      );
      cliques.push(of.map((clique) => (clique === NONE ? NONE : clique + cliqueCount)));
      cliqueCount += count;
    }
  });
  return { before, cliques, cliqueCount };
}

/** Each place joins the first clique all of which it clashes with. */
function partition(length: number, clashes: (place: number, against: number) => boolean) {
  const members: number[][] = [];
  const of = new Int32Array(length).fill(NONE);
  for (let place = 0; place < length; place++) {
    if (!clashes(place, place)) continue;
    const found = members.findIndex((clique) =>
      clique.every((other) => clashes(place, other) && clashes(other, place)),
    );
    of[place] = found === NONE ? members.push([place]) - 1 : found;
    if (found !== NONE) members[found]?.push(place);
  }
  return { of, count: members.length };
}
