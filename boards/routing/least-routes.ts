import { Heap } from './heap';
import type { TrayGraph } from './tray-graph';

export interface RouteQuery {
  readonly from: number;
  readonly to: number;
  /** No route is longer than this. */
  readonly budgetUm: number;
  /** What is to be least; of routes that are equal in it, the other decides. */
  readonly least: 'visible' | 'total';
  /** By place in the list of openings: whether this cable goes through. */
  readonly passable: readonly boolean[];
  /** Openings that others want too: one route for each set of them that is worth its while. None: one route. */
  readonly contested?: ReadonlySet<number>;
  /** How many labels are settled before the search is given up. */
  readonly labels?: number;
}

/** A route as places in the lists of paths and openings, in the order in which they are passed. */
export interface FoundRoute {
  readonly visibleUm: number;
  readonly totalUm: number;
  readonly paths: readonly number[];
  readonly openings: readonly number[];
}

export interface FoundRoutes {
  /** The best first. No later one passes all the contested openings of an earlier one. */
  readonly routes: readonly FoundRoute[];
  /** False where labels ran out, so that a route may be missing. */
  readonly complete: boolean;
  readonly labels: number;
}

/** A way from the beginning to a node, as a link to the label before it. */
interface Label {
  readonly node: number;
  readonly visibleUm: number;
  readonly totalUm: number;
  /** Contested openings passed, a bit each, in two halves. */
  readonly low: number;
  readonly high: number;
  readonly before: Label | undefined;
  readonly path: number;
  readonly opening: number;
}

/**
 * Shortest paths under a resource, exactly, by setting labels (Desrochers and Soumis 1988, from memory):
 * labels are settled in the order of their cost, and one that is nowhere better than an earlier label of
 * its node, in cost, length and contested openings, is dropped. What cannot reach the end within the length
 * that is left is never begun.
 */
export function leastRoutes(graph: TrayGraph, query: RouteQuery): FoundRoutes {
  const { from, to, budgetUm, least, passable, contested = new Set(), labels: most = Infinity } = query;
  const restUm = distances(graph, to, passable);
  const bitOf = new Map([...contested].map((opening, at) => [opening, at]));
  const settled: Label[][] = graph.steps.map(() => []);
  const found: Label[] = [];
  const all: Label[] = [];
  const first = (label: Label) => (least === 'visible' ? label.visibleUm : label.totalUm);
  const second = (label: Label) => (least === 'visible' ? label.totalUm : label.visibleUm);
  const heap = new Heap((one, other) => {
    const [a, b] = [all[one], all[other]];
    if (a === undefined || b === undefined) return false;
    return first(a) - first(b) < 0 || (first(a) === first(b) && (second(a) - second(b) || one - other) < 0);
  });
  const open = (label: Label) => {
    if (label.totalUm + (restUm[label.node] ?? Infinity) <= budgetUm) heap.push(all.push(label) - 1);
  };
  const start = { node: from, visibleUm: 0, totalUm: 0, low: 0, high: 0 };
  open({ ...start, before: undefined, path: -1, opening: -1 });
  let count = 0;
  for (let at = heap.pop(); at !== undefined; at = heap.pop()) {
    const label = all[at];
    if (label === undefined) break;
    // Later labels cost no less: only passing other openings, or the second cost, can still speak for one.
    if (found.some((other) => passesAll(label, other))) continue;
    const here = settled[label.node] ?? [];
    if (here.some((other) => second(other) <= second(label) && passesAll(label, other))) continue;
    if (count >= most) return { routes: found.map(routeOf), complete: false, labels: count };
    count += 1;
    here.push(label);
    if (label.node === to) {
      found.push(label);
      if (contested.size === 0) break;
      continue;
    }
    if (graph.isEnd[label.node] && label.node !== from) continue;
    for (const { to: node, visibleUm, totalUm, path, opening } of graph.steps[label.node] ?? []) {
      if (opening >= 0 && passable[opening] !== true) continue;
      const bit = bitOf.get(opening);
      open({
        node,
        visibleUm: label.visibleUm + visibleUm,
        totalUm: label.totalUm + totalUm,
        low: bit !== undefined && bit < 32 ? label.low | (1 << bit) : label.low,
        high: bit !== undefined && bit >= 32 ? label.high | (1 << (bit - 32)) : label.high,
        before: label,
        path,
        opening,
      });
    }
  }
  return { routes: found.map(routeOf), complete: true, labels: count };
}

/** True when the label has passed every contested opening that the other has. */
function passesAll(label: Label, other: Label): boolean {
  return (other.low & ~label.low) === 0 && (other.high & ~label.high) === 0;
}

function routeOf(end: Label): FoundRoute {
  const paths: number[] = [];
  const openings: number[] = [];
  for (let label: Label | undefined = end; label !== undefined; label = label.before) {
    if (label.path >= 0) paths.unshift(label.path);
    if (label.opening >= 0) openings.unshift(label.opening);
  }
  return { visibleUm: end.visibleUm, totalUm: end.totalUm, paths, openings };
}

/** How far every node is from one, in micrometres (Dijkstra 1959). */
function distances(graph: TrayGraph, from: number, passable: readonly boolean[]): readonly number[] {
  const best = graph.steps.map(() => Infinity);
  const done = graph.steps.map(() => false);
  best[from] = 0;
  const entries: { readonly node: number; readonly um: number }[] = [{ node: from, um: 0 }];
  const heap = new Heap((one, other) => (entries[one]?.um ?? 0) < (entries[other]?.um ?? 0));
  heap.push(0);
  for (let at = heap.pop(); at !== undefined; at = heap.pop()) {
    const entry = entries[at];
    if (entry === undefined || done[entry.node]) continue;
    done[entry.node] = true;
    if (graph.isEnd[entry.node] && entry.node !== from) continue;
    for (const { to, totalUm, opening } of graph.steps[entry.node] ?? []) {
      const um = entry.um + totalUm;
      if ((opening >= 0 && passable[opening] !== true) || um >= (best[to] ?? 0)) continue;
      best[to] = um;
      heap.push(entries.push({ node: to, um }) - 1);
    }
  }
  return best;
}
