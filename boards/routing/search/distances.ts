import { byIdentity } from '../../base/by-identity';
import { Heap } from './heap';
import type { Step, TrayGraph } from './tray-graph';

/** How far every node is from one; Infinity where nothing leads. */
export interface Distances {
  readonly visibleUm: Float64Array;
  readonly totalUm: Float64Array;
  /** By node: its step on the way, a place in the list of its steps; −1 at the end and where nothing leads. */
  readonly next: Int32Array;
}

export type Least = 'visible' | 'total';

/**
 * How far every node is from one by the way with least of something, and of those least of the other
 * (Dijkstra 1959). Kept with the graph: the cables of a supply all ask the same.
 *
 * @param passable by place in the list of openings
 */
export function distancesTo(
  graph: TrayGraph,
  to: number,
  passable: readonly boolean[],
  least: Least,
): Distances {
  const kept = known({ graph, passable });
  const key = 2 * to + (least === 'visible' ? 1 : 0);
  let found = kept.get(key);
  if (found === undefined) {
    found = workOut(graph, to, passable, least);
    kept.set(key, found);
  }
  return found;
}

/** By end, for a graph and the list of what is passable, which a tray has once for each kind of cable. */
const known = byIdentity(
  (_: { readonly graph: TrayGraph; readonly passable: readonly boolean[] }) => new Map<number, Distances>(),
  ({ graph, passable }) => [graph, passable],
);

function workOut(graph: TrayGraph, from: number, passable: readonly boolean[], least: Least): Distances {
  const visibleUm = new Float64Array(graph.steps.length).fill(Infinity);
  const totalUm = visibleUm.slice();
  const next = new Int32Array(graph.steps.length).fill(-1);
  const done = new Uint8Array(graph.steps.length);
  const [first, second] = least === 'visible' ? [visibleUm, totalUm] : [totalUm, visibleUm];
  const heap = new Heap();
  visibleUm[from] = 0;
  totalUm[from] = 0;
  heap.push(from, 0, 0);
  for (let node = heap.pop(); node !== undefined; node = heap.pop()) {
    if (done[node] === 1) continue;
    done[node] = 1;
    if (graph.isEnd[node] === true && node !== from) continue;
    const hereFirst = first[node] ?? 0;
    const hereSecond = second[node] ?? 0;
    for (const [at, step] of (graph.steps[node] ?? []).entries()) {
      if (step.opening >= 0 && passable[step.opening] !== true) continue;
      const a = hereFirst + (least === 'visible' ? step.visibleUm : step.totalUm);
      const b = hereSecond + (least === 'visible' ? step.totalUm : step.visibleUm);
      const best = first[step.to] ?? 0;
      if (a > best || (a === best && b >= (second[step.to] ?? 0))) continue;
      first[step.to] = a;
      second[step.to] = b;
      next[step.to] = graph.back[node]?.[at] ?? -1;
      heap.push(step.to, a, b);
    }
  }
  return { visibleUm, totalUm, next };
}

/** The steps from a node along the way that the distances were measured by. */
export function stepsAlong(graph: TrayGraph, { next }: Distances, from: number): readonly Step[] {
  const along: Step[] = [];
  for (let node = from; ; ) {
    const step = graph.steps[node]?.[next[node] ?? -1];
    if (step === undefined) return along;
    along.push(step);
    node = step.to;
  }
}
