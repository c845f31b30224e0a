import type { Box } from './geometry';

/**
 * Finds the things that may touch a box, without going through all of them: sorted by their left edge,
 * only those between the widest one's reach to the left and the box's right edge can.
 */
export function nearIndex<T>(items: readonly T[], boxOf: (item: T) => Box): (box: Box) => readonly T[] {
  const sorted = items
    .map((item) => ({ item, box: boxOf(item) }))
    .sort((a, b) => a.box.leftMm - b.box.leftMm);
  const widest = sorted.reduce((most, { box }) => Math.max(most, box.rightMm - box.leftMm), 0);
  return (box) => {
    const found: T[] = [];
    for (let i = firstFrom(sorted, box.leftMm - widest); i < sorted.length; i++) {
      const entry = sorted[i];
      if (entry === undefined || entry.box.leftMm > box.rightMm) break;
      if (touches(entry.box, box)) found.push(entry.item);
    }
    return found;
  };
}

function firstFrom(sorted: readonly { readonly box: Box }[], leftMm: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle]?.box.leftMm ?? 0) < leftMm) low = middle + 1;
    else high = middle;
  }
  return low;
}

function touches(a: Box, b: Box): boolean {
  return a.rightMm >= b.leftMm && a.bottomMm >= b.topMm && a.topMm <= b.bottomMm;
}
