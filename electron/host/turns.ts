/** Lets pieces of work on the same thing run one after the other, in the order they were asked for. */
export interface Turns {
  readonly take: <T>(key: string, work: () => Promise<T>) => Promise<T>;
}

export function makeTurns(): Turns {
  const last = new Map<string, Promise<unknown>>();
  return {
    take: (key, work) => {
      const before = last.get(key) ?? Promise.resolve();
      // A failed piece of work is told to whoever asked for it; it must not stop the next one.
      const mine = before.then(work, work);
      const settled = mine
        .catch(() => undefined)
        .then(() => {
          if (last.get(key) === settled) last.delete(key);
        });
      last.set(key, settled);
      return mine;
    },
  };
}
