/** The smallest sets that take something out of every conflict, or as many as were found before the limit. */
export interface Diagnoses<T> {
  readonly sets: readonly (readonly T[])[];
  /** False when the step limit was met: there may be more, and those found may not all be minimal ones. */
  readonly complete: boolean;
}

/** Sets tried before the search gives up. */
const STEPS = 20_000;

/**
 * Minimal diagnoses: every smallest set of suspects that hits each conflict, where a conflict is a set of
 * which at least one is wrong. Smaller sets first; within one size in the order of the conflicts.
 * Method: hitting sets by breadth first search (Reiter 1987, A theory of diagnosis from first principles).
 */
export function minimalDiagnoses<T>(conflicts: readonly ReadonlySet<T>[], steps = STEPS): Diagnoses<T> {
  if (conflicts.some((conflict) => conflict.size === 0)) return { sets: [], complete: true };
  const found: ReadonlySet<T>[] = [];
  let waiting: ReadonlySet<T>[] = [new Set()];
  let tried = 0;
  while (waiting.length > 0) {
    const next: ReadonlySet<T>[] = [];
    for (const set of waiting) {
      if (tried++ >= steps) return { sets: found.map(asList), complete: false };
      if (found.some((smaller) => isWithin(smaller, set))) continue;
      const open = conflicts.find((conflict) => !meets(conflict, set));
      if (open === undefined) {
        if (!found.some((other) => isWithin(other, set))) found.push(set);
        continue;
      }
      for (const suspect of open) {
        const larger = new Set([...set, suspect]);
        if (!next.some((other) => other.size === larger.size && isWithin(other, larger))) next.push(larger);
      }
    }
    waiting = next;
  }
  return { sets: found.map(asList), complete: true };
}

function asList<T>(set: ReadonlySet<T>): readonly T[] {
  return [...set];
}

function isWithin<T>(inner: ReadonlySet<T>, outer: ReadonlySet<T>): boolean {
  return [...inner].every((item) => outer.has(item));
}

function meets<T>(conflict: ReadonlySet<T>, set: ReadonlySet<T>): boolean {
  return [...conflict].some((item) => set.has(item));
}
