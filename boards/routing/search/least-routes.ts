import { distancesTo, type Least, stepsAlong } from './distances';
import { Heap } from './heap';
import type { Step, TrayGraph } from './tray-graph';

export interface RouteQuery {
  readonly from: number;
  readonly to: number;
  /** No route is longer than this. */
  readonly budgetUm: number;
  /** What is to be least; of routes that are equal in it, the other decides. */
  readonly least: Least;
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

/** How a label came about. */
interface From {
  /** Contested openings passed, a bit each, in two halves. */
  readonly low: number;
  readonly high: number;
  readonly before: Label | undefined;
  readonly path: number;
  readonly opening: number;
}

/** A way from the beginning to a node, as a link to the label before it. */
interface Label extends From {
  readonly node: number;
  readonly visibleUm: number;
  readonly totalUm: number;
}

/**
 * Shortest paths under a resource, exactly, by setting labels (Desrochers and Soumis 1988, from memory):
 * labels are settled in the order of what they cost with the least that is still before them (as in A*, Hart,
 * Nilsson and Raphael 1968), and one that is nowhere better than an earlier label of
 * its node, in cost, length and contested openings, is dropped. What cannot reach the end within the length
 * that is left is never begun.
 *
 * It is searched from the far end back: cables begin at few places, and how far everything is from one of them
 * is worked out once for all.
 */
export function leastRoutes(graph: TrayGraph, query: RouteQuery): FoundRoutes {
  const found = routesBack(graph, { ...query, from: query.to, to: query.from });
  return { ...found, routes: found.routes.map(turnedRound) };
}

function turnedRound(route: FoundRoute): FoundRoute {
  return { ...route, paths: route.paths.toReversed(), openings: route.openings.toReversed() };
}

function routesBack(graph: TrayGraph, query: RouteQuery): FoundRoutes {
  const { from, to, budgetUm, least, passable, contested = new Set(), labels: most = Infinity } = query;
  const toGo = distancesTo(graph, to, passable, 'total');
  const ahead = least === 'total' ? toGo : distancesTo(graph, to, passable, 'visible');
  // The way with least of all is the answer where it is short enough, and only one is asked for.
  const leastUm = ahead.totalUm[from] ?? Infinity;
  if (leastUm === Infinity) return { routes: [], complete: true, labels: 0 };
  if (contested.size === 0 && leastUm <= budgetUm)
    return { routes: routesAlong(stepsAlong(graph, ahead, from)), complete: true, labels: 0 };
  const bitOf = new Map([...contested].map((opening, at) => [opening, at]));
  const settled: Label[][] = graph.steps.map(() => []);
  const found: Label[] = [];
  const all: Label[] = [];
  const isVisible = least === 'visible';
  const second = (label: Label) => (isVisible ? label.totalUm : label.visibleUm);
  const heap = new Heap();
  const open = (node: number, visibleUm: number, totalUm: number, from: From) => {
    if (totalUm + (toGo.totalUm[node] ?? Infinity) > budgetUm) return;
    const visible = visibleUm + (ahead.visibleUm[node] ?? Infinity);
    const total = totalUm + (ahead.totalUm[node] ?? Infinity);
    heap.push(all.length, isVisible ? visible : total, isVisible ? total : visible);
    const { low, high, before, path, opening } = from;
    all.push({ node, visibleUm, totalUm, low, high, before, path, opening });
  };
  open(from, 0, 0, { low: 0, high: 0, before: undefined, path: -1, opening: -1 });
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
      open(node, label.visibleUm + visibleUm, label.totalUm + totalUm, {
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

function routesAlong(steps: readonly Step[]): readonly FoundRoute[] {
  const sum = (of: (step: Step) => number) => steps.reduce((all, step) => all + of(step), 0);
  return [
    {
      visibleUm: sum(({ visibleUm }) => visibleUm),
      totalUm: sum(({ totalUm }) => totalUm),
      paths: steps.flatMap(({ path }) => (path >= 0 ? [path] : [])),
      openings: steps.flatMap(({ opening }) => (opening >= 0 ? [opening] : [])),
    },
  ];
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
