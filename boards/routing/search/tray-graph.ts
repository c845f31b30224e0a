import { byIdentity } from '../../base/by-identity';
import type { Mm } from '../../base/units';
import type { Tray, TraySide } from '../../document/tray';

/**
 * Lengths are counted in whole micrometres, so that sums are exact and a route that just reaches does not
 * fail at the sixteenth digit.
 */
export const UM_PER_MM = 1_000;

export function toUm(lengthMm: Mm): number {
  return Math.round(lengthMm * UM_PER_MM);
}

/** One step from a node: along a path of the tray, or through an opening. */
export interface Step {
  readonly to: number;
  readonly visibleUm: number;
  readonly totalUm: number;
  /** Place in the list of paths; −1 through an opening. */
  readonly path: number;
  /** Place in the list of openings; −1 along a path. */
  readonly opening: number;
}

/**
 * A tray as a graph. An opening is two nodes, one on each side, and the step between them is what passes
 * it; every other place is one. A bay and the supply are ends: nothing runs on through them.
 */
export interface TrayGraph {
  readonly steps: readonly (readonly Step[])[];
  /** By node and step: the place of the same step the other way in the list of the node that it leads to. */
  readonly back: readonly (readonly number[])[];
  readonly isEnd: readonly boolean[];
  /** The node of a point, a bay or the supply. */
  readonly nodeOf: ReadonlyMap<string, number>;
}

/** The graph of a tray, made once for each. What lies on the front is in sight. */
export const trayGraph: (tray: Tray) => TrayGraph = byIdentity((tray: Tray): TrayGraph => {
  const steps: Step[][] = [];
  const back: number[][] = [];
  const isEnd: boolean[] = [];
  const add = (end: boolean) => {
    isEnd.push(end);
    back.push([]);
    return steps.push([]) - 1;
  };
  const nodeOf = new Map<string, number>();
  for (const { id } of tray.points) nodeOf.set(id, add(false));
  for (const { id } of tray.bays) nodeOf.set(id, add(true));
  if (tray.supply !== undefined) nodeOf.set(tray.supply.id, add(true));

  const join = (one: number, other: number, step: Omit<Step, 'to'>) => {
    back[one]?.push(steps[other]?.length ?? 0);
    back[other]?.push(steps[one]?.length ?? 0);
    steps[one]?.push({ ...step, to: other });
    steps[other]?.push({ ...step, to: one });
  };
  const sidesOf = new Map<string, Readonly<Record<TraySide, number>>>();
  tray.openings.forEach(({ id }, opening) => {
    const sides = { front: add(false), back: add(false) };
    sidesOf.set(id, sides);
    join(sides.front, sides.back, { visibleUm: 0, totalUm: 0, path: -1, opening });
  });
  tray.paths.forEach(({ from, to, lengthMm, side }, path) => {
    const [one, other] = [from, to].map((place) => nodeOf.get(place) ?? sidesOf.get(place)?.[side]);
    if (one === undefined || other === undefined) throw new RangeError(`No place for the path at ${path}`);
    const totalUm = toUm(lengthMm);
    join(one, other, { visibleUm: side === 'front' ? totalUm : 0, totalUm, path, opening: -1 });
  });
  return { steps, back, isEnd, nodeOf };
});
