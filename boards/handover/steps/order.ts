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
  const known = new Set(tasks.map(({ id }) => id));
  const waiting = new Map(
    tasks.map(({ id, after }) => [id, new Set(after.filter((each) => known.has(each)))]),
  );
  const left = [...tasks];
  const order: T[] = [];
  while (left.length > 0) {
    const at = left.findIndex(({ id }) => waiting.get(id)?.size === 0);
    const next = left[at];
    if (next === undefined) return refuse({ code: 'ring', ids: ringIn(left) });
    left.splice(at, 1);
    order.push(next);
    for (const others of waiting.values()) others.delete(next.id);
  }
  return ok(order);
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
