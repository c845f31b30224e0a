const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * Does work that a signal to end does not break off in the middle: the program ends by that signal when the work
 * is done. A second one of the same kind ends it at once, for a disk may never answer.
 */
export async function unbroken<T>(work: () => Promise<T>): Promise<T> {
  let came: NodeJS.Signals | undefined;
  const note = (signal: NodeJS.Signals) => {
    came ??= signal;
  };
  for (const signal of SIGNALS) process.once(signal, note);
  try {
    return await work();
  } finally {
    for (const signal of SIGNALS) process.off(signal, note);
    if (came !== undefined) process.kill(process.pid, came);
  }
}
