import type { Packed } from './packed';

/** The slots that still hang together by clashes, and the choices that are worth looking at in each. */
export interface Component {
  readonly slots: readonly number[];
  /** By the place of the slot in `slots`: its choices, cheapest first. */
  readonly choices: readonly Int32Array[];
}

/**
 * Drops every choice for which another of its slot costs no more and clashes with nothing else, and
 * takes apart what no clash holds together any more. Neither loses an optimum.
 */
export function components(packed: Packed): readonly Component[] {
  const kept = Array.from({ length: packed.slotCount }, (_, slot) => worthwhile(packed, slot));
  const alive = new Uint8Array(packed.slotOf.length);
  for (const choices of kept) for (const choice of choices) alive[choice] = 1;
  const group = Int32Array.from({ length: packed.slotCount }, (_, slot) => slot);
  const root = (slot: number): number => {
    let at = slot;
    while (group[at] !== at) at = group[at] ?? at;
    return at;
  };
  kept.forEach((choices, slot) => {
    for (const choice of choices)
      for (const other of packed.clashesOf[choice] ?? []) {
        if (alive[other] !== 1) continue;
        const [a, b] = [root(slot), root(packed.slotOf[other] ?? slot)];
        group[Math.max(a, b)] = Math.min(a, b);
      }
  });
  const members = new Map<number, number[]>();
  kept.forEach((_, slot) => {
    const of = root(slot);
    members.set(of, [...(members.get(of) ?? []), slot]);
  });
  return [...members.values()].map((slots) => ({
    slots,
    choices: slots.map((slot) => Int32Array.from(kept[slot] ?? [])),
  }));
}

/** Compares two costs at `width` numbers each: negative where the first is less. */
function compareAt({ costs, width }: Packed, one: number, other: number): number {
  for (let at = 0; at < width; at++) {
    const apart = (costs[one * width + at] ?? 0) - (costs[other * width + at] ?? 0);
    if (apart !== 0) return apart;
  }
  return 0;
}

/** The undominated choices of a slot, cheapest first; equal ones in their own order. */
function worthwhile(packed: Packed, slot: number): readonly number[] {
  const { firstOf, clashesOf } = packed;
  const first = firstOf[slot] ?? 0;
  const all = Array.from({ length: (firstOf[slot + 1] ?? 0) - first }, (_, index) => first + index);
  const byCost = all.sort((a, b) => compareAt(packed, a, b) || a - b);
  const kept: number[] = [];
  for (const choice of byCost) {
    const own = clashesOf[choice] ?? new Int32Array();
    if (!kept.some((cheaper) => isSubset(clashesOf[cheaper] ?? new Int32Array(), own))) kept.push(choice);
  }
  return kept;
}

/** Whether every number of one ascending list is in the other. */
function isSubset(part: Int32Array, whole: Int32Array): boolean {
  if (part.length > whole.length) return false;
  let at = 0;
  for (const each of part) {
    while (at < whole.length && (whole[at] ?? 0) < each) at += 1;
    if (whole[at] !== each) return false;
    at += 1;
  }
  return true;
}
