import type { HostCalls } from './host-calls';
import type { Versions } from './versions';

/** What was asked for and is not done yet. */
export interface UnderWay {
  /** Gives the work back, which is under way until it is done or has failed. */
  readonly add: <T>(work: Promise<T>) => Promise<T>;
  /** When nothing is under way any more, what was added meanwhile included. */
  readonly idle: () => Promise<void>;
}

export function makeUnderWay(): UnderWay {
  const all = new Set<Promise<unknown>>();
  return {
    add: (work) => {
      const done: Promise<unknown> = work.catch(() => undefined).then(() => all.delete(done));
      all.add(done);
      return work;
    },
    idle: async () => {
      while (all.size > 0) await Promise.all(all);
    },
  };
}

/** A dialog waits for a person, who may have closed the window over it; a drawing is for a window that is gone. */
const NOT_WAITED_FOR: readonly string[] = [
  'chooseOpen',
  'chooseSave',
  'chooseFolder',
  'drawPaper',
] satisfies (keyof HostCalls)[];

/** The same calls, each under way until it is answered. */
export function watchedCalls(calls: HostCalls, underWay: UnderWay): HostCalls {
  const watched = Object.entries(calls).map(([name, call]: [string, (input: never) => Promise<unknown>]) => [
    name,
    NOT_WAITED_FOR.includes(name) ? call : (input: never) => underWay.add(call(input)),
  ]);
  // Each stands under its own name again, which the compiler cannot see.
  return Object.fromEntries(watched) as HostCalls;
}

/** Enough for a large save or paper; what takes longer was never said to be saved, and the former file is whole. */
const LONGEST_END_MS = 30_000;

interface Work {
  readonly underWay: UnderWay;
  readonly versions: Versions;
}

/** When all that was asked of a machine is done and the versions of its files are kept, or after the longest time. */
export async function workEnded({ underWay, versions }: Work, longestMs = LONGEST_END_MS): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, longestMs);
  });
  await Promise.race([underWay.idle().then(versions.settled), late]);
  clearTimeout(timer);
}
