import { ok, type Result, refuse } from '../../base/result';

/** Something to be done, and what has to be done before it. */
export interface Task {
  readonly id: string;
  /** Ids of other tasks; those that are not in the list are taken as done. */
  readonly after: readonly string[];
}

/** Tasks that wait for each other in a ring: each for the next one, the last for the first. */
export interface Ring {
  readonly code: 'ring';
  readonly ids: readonly string[];
}

/**
 * The tasks in an order that keeps every "after", and otherwise as near to the given one as it can be: of
 * those that may come next always the one that was named first. Refuses with a ring where there is one.
 *
 * Source: Kahn, Topological sorting of large networks, Communications of the ACM 5 (1962), with the first
 * free task taken in place of any.
 */
export function inOrder<T extends Task>(tasks: readonly T[]): Result<readonly T[], Ring> {
  const placeOf = new Map(tasks.map(({ id }, at) => [id, at]));
  const waits = tasks.map(({ after }) => new Set(after.filter((each) => placeOf.has(each))));
  const waitedFor: number[][] = tasks.map(() => []);
  for (const [at, others] of waits.entries())
    for (const other of others) waitedFor[placeOf.get(other) ?? at]?.push(at);
  const open = waits.map(({ size }) => size);
  const free = open.flatMap((count, at) => (count === 0 ? [at] : []));
  const order: T[] = [];
  for (let at = free.shift(); at !== undefined; at = free.shift()) {
    order.push(tasks[at] as T);
    for (const next of waitedFor[at] ?? []) {
      open[next] = (open[next] ?? 0) - 1;
      if (open[next] === 0) putIn(free, next);
    }
  }
  if (order.length === tasks.length) return ok(order);
  return refuse({ code: 'ring', ids: ringIn(tasks.filter((_, at) => open[at] !== 0)) });
}

/** Puts a number into its place in a list that is sorted. */
function putIn(sorted: number[], number: number): void {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? 0) < number) low = middle + 1;
    else high = middle;
  }
  sorted.splice(low, 0, number);
}

/** Follows what each waits for until one comes again: every task that is left waits for another that is. */
function ringIn(left: readonly Task[]): readonly string[] {
  const byId = new Map(left.map((task) => [task.id, task]));
  const way: string[] = [];
  let id = left[0]?.id;
  while (id !== undefined && !way.includes(id)) {
    way.push(id);
    id = byId.get(id)?.after.find((each) => byId.has(each));
  }
  return id === undefined ? way : way.slice(way.indexOf(id));
}
