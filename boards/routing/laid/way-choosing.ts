import type { Mm } from '../../base/units';
import type { TraySide } from '../../document/tray';
import type { Cable, Laying } from '../fill/laying';

/** Where a way that is being chosen can go on to. */
interface Continuation {
  readonly place: string;
  readonly path: string;
  readonly side: TraySide;
  readonly lengthMm: Mm;
}

/** A way that is being chosen: paths from the near end on, also those that a connector brings along. */
export interface WayBegun {
  /** The place that it has come to. */
  readonly at: string;
  readonly done: boolean;
  readonly totalMm: Mm;
  readonly visibleMm: Mm;
  /** The nearest first; one for each place and side. */
  readonly next: readonly Continuation[];
}

/**
 * How far a way has come, and where it can go on to. Bays and the supply are ends, so a way that is at one
 * which is not its own goes nowhere on. Undefined where the paths do not hang together.
 */
export function wayBegun(
  laying: Laying,
  { from, to }: Cable,
  chosen: readonly string[],
): WayBegun | undefined {
  let at = from;
  let [totalMm, visibleMm] = [0, 0];
  const seen = new Set<string>([from]);
  for (const id of chosen) {
    const path = laying.paths.find((each) => each.id === id);
    if (path === undefined || (path.from !== at && path.to !== at)) return undefined;
    at = path.from === at ? path.to : path.from;
    seen.add(at);
    totalMm += path.lengthMm;
    if (path.side === 'front') visibleMm += path.lengthMm;
  }
  const done = at === to;
  const ends = new Set([...laying.bays.map(({ id }) => id), ...(laying.supply ? [laying.supply.id] : [])]);
  const stuck = done || (ends.has(at) && at !== from);
  const next = stuck
    ? []
    : laying.paths
        .flatMap(({ id, from: one, to: other, side, lengthMm }): readonly Continuation[] => {
          if (one !== at && other !== at) return [];
          const place = one === at ? other : one;
          const useless = seen.has(place) || (ends.has(place) && place !== to);
          return useless ? [] : [{ place, path: id, side, lengthMm }];
        })
        .toSorted((a, b) => a.lengthMm - b.lengthMm);
  return { at, done, totalMm, visibleMm, next };
}

/** The shortest of the paths by which a way can go on to a place; undefined where none leads there. */
export function pathOnTo(begun: WayBegun, place: string): string | undefined {
  return begun.next.find((each) => each.place === place)?.path;
}
