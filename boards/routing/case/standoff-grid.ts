import type { Mm } from '../../base/units';
import type { Outline } from '../../document/outline';
import type { BoardPlace, Standoff } from '../../document/tray';
import { onTray } from './board-on-tray';

/** A place nearer than this to one that is there already is the same place, read with a ruler. */
const SAME_PLACE_MM: Mm = 2;

/** A size of boards with its holes, and the ids of those whose published places are not agreed on. */
export interface BoardSize {
  readonly outline: Outline;
  readonly unsure: readonly string[];
}

/**
 * Places of standoffs for all boards of these sizes, as cases have them: one under every hole, where the
 * board lies in its place. Holes that sizes share come once, unsure ones not at all, and none where the tray
 * has a place already.
 *
 * @param there places that the tray has
 * @param idFor gives an id that is not taken, from one that is wished for: "standoff-c"
 */
export function standoffGrid(
  sizes: readonly BoardSize[],
  place: BoardPlace,
  there: readonly Standoff[],
  idFor: (wished: string) => string,
): readonly Standoff[] {
  const grid: Standoff[] = [];
  for (const { outline, unsure } of sizes) {
    for (const hole of outline.holes ?? []) {
      if (unsure.includes(hole.id)) continue;
      const at = onTray(hole, place, outline);
      const near = (other: Standoff) => Math.hypot(other.xMm - at.xMm, other.yMm - at.yMm) <= SAME_PLACE_MM;
      if ([...there, ...grid].some(near)) continue;
      grid.push({
        id: idFor(`standoff-${hole.id}`),
        name: hole.label ?? hole.id,
        xMm: hundredths(at.xMm),
        yMm: hundredths(at.yMm),
      });
    }
  }
  return grid;
}

function hundredths(value: Mm): Mm {
  return Math.round(value * 100) / 100;
}
