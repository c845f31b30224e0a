/**
 * Begins to measure; what it gives tells how many milliseconds the work has taken since. The clock runs on while the
 * machine does something else, and the processor counts what the engine clears up beside the work: the less of the
 * two is never more than the work took by either.
 */
export function beginMeasure(): () => number {
  const [since, used] = [performance.now(), process.cpuUsage()];
  return () => {
    const { user, system } = process.cpuUsage(used);
    return Math.min(performance.now() - since, (user + system) / 1_000);
  };
}
