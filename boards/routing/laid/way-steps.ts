import type { Mm } from '../../base/units';
import type { TraySide } from '../../document/tray';
import type { Cable, Laying } from '../fill/laying';
import type { Route } from '../search/reach';

/** One piece of a way. */
export type WayStep =
  | {
      readonly kind: 'along';
      readonly path: string;
      readonly from: string;
      readonly to: string;
      readonly side: TraySide;
      readonly lengthMm: Mm;
    }
  | { readonly kind: 'through'; readonly opening: string; readonly to: TraySide };

/** A way piece by piece, from the near end of the cable to the far one. */
export function wayStepsOf({ paths, openings }: Laying, { from }: Cable, route: Route): readonly WayStep[] {
  const steps: WayStep[] = [];
  let at = from;
  let before: TraySide | undefined;
  for (const id of route.paths) {
    const path = paths.find((each) => each.id === id);
    if (path === undefined) throw new RangeError(`No path ${id} in the tray`);
    const { side, lengthMm } = path;
    if (before !== undefined && before !== side && openings.some((each) => each.id === at))
      steps.push({ kind: 'through', opening: at, to: side });
    const to = path.from === at ? path.to : path.from;
    steps.push({ kind: 'along', path: id, from: at, to, side, lengthMm });
    before = side;
    at = to;
  }
  return steps;
}
