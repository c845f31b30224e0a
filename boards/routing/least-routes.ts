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
  /** What the whole way costs at least, by what is to be least and by the other. */
  readonly first: number;
  readonly second: number;
  readonly before: Label | undefined;
  readonly path: number;
  readonly opening: number;
}

/**
 * Shortest paths under a resource, exactly, by setting labels (Desrochers and Soumis 1988, from memory):
 * labels are settled in the order of what they cost with the least that is still before them (as in A*, Hart,
 * Nilsson and Raphael 1968), and one that is nowhere better than an earlier label of
 * its node, in cost, length and contested openings, is dropped. What cannot reach the end within the length
 * that is left is never begun.
 */
export function leastRoutes(graph: TrayGraph, query: RouteQuery): FoundRoutes {
  const { from, to, budgetUm, least, passable, contested = new Set(), labels: most = Infinity } = query;
  const toGo = distances(graph, to, passable, 'total');
  const ahead = least === 'total' ? toGo : distances(graph, to, passable, 'visible');
  const bitOf = new Map([...contested].map((opening, at) => [opening, at]));
  const settled: Label[][] = graph.steps.map(() => []);
  const found: Label[] = [];
  const all: Label[] = [];
  const second = (label: Label) => (least === 'visible' ? label.totalUm : label.visibleUm);
  const heap = new Heap((one, other) => {
    const [a, b] = [all[one], all[other]];
    if (a === undefined || b === undefined) return false;
    return (a.first - b.first || a.second - b.second || one - other) < 0;
  });
  const open = (label: Omit<Label, 'first' | 'second'>) => {
    const [visible, total] = [ahead.visibleUm[label.node] ?? Infinity, ahead.totalUm[label.node] ?? Infinity];
    if (label.totalUm + (toGo.totalUm[label.node] ?? Infinity) > budgetUm) return;
    const whole = [label.visibleUm + visible, label.totalUm + total] as const;
    const [first, then] = least === 'visible' ? whole : [whole[1], whole[0]];
    heap.push(all.push({ ...label, first, second: then }) - 1);
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

interface Distances {
  readonly visibleUm: Float64Array;
  readonly totalUm: Float64Array;
}

/** How far every node is from one by the way with least of something, and of those least of the other (Dijkstra 1959). */
function distances(
  graph: TrayGraph,
  from: number,
  passable: readonly boolean[],
  least: 'visible' | 'total',
): Distances {
  const visibleUm = new Float64Array(graph.steps.length).fill(Infinity);
  const totalUm = visibleUm.slice();
  const done = graph.steps.map(() => false);
  const [first, second] = least === 'visible' ? [visibleUm, totalUm] : [totalUm, visibleUm];
  const entries: { readonly node: number; readonly first: number; readonly second: number }[] = [];
  const heap = new Heap((one, other) => {
    const [a, b] = [entries[one], entries[other]];
    return (
      a !== undefined && b !== undefined && (a.first - b.first || a.second - b.second || one - other) < 0
    );
  });
  const enter = (node: number, a: number, b: number) => {
    const known = first[node] ?? 0;
    if (a > known || (a === known && b >= (second[node] ?? 0))) return;
    first[node] = a;
    second[node] = b;
    heap.push(entries.push({ node, first: a, second: b }) - 1);
  };
  enter(from, 0, 0);
  for (let at = heap.pop(); at !== undefined; at = heap.pop()) {
    const entry = entries[at];
    if (entry === undefined || done[entry.node]) continue;
    done[entry.node] = true;
    if (graph.isEnd[entry.node] && entry.node !== from) continue;
    for (const step of graph.steps[entry.node] ?? []) {
      if (step.opening >= 0 && passable[step.opening] !== true) continue;
      const [a, b] = least === 'visible' ? [step.visibleUm, step.totalUm] : [step.totalUm, step.visibleUm];
      enter(step.to, entry.first + a, entry.second + b);
    }
  }
  return { visibleUm, totalUm };
}
