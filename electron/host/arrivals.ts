/** Files that are to be opened before a page is there to open them. */
export interface Arrivals {
  readonly add: (paths: readonly string[]) => void;
  /** Each is handed out once: a page that is loaded again does not open it anew. */
  readonly take: () => readonly string[];
}

export function makeArrivals(paths: readonly string[]): Arrivals {
  let waiting = paths;
  return {
    add: (more) => {
      waiting = [...waiting, ...more];
    },
    take: () => {
      const taken = waiting;
      waiting = [];
      return taken;
    },
  };
}
