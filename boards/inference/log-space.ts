/** The logarithm of a sum of numbers given by their logarithms, without overflow; of none, minus infinity. */
export function logSumExp(logs: ArrayLike<number>): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < logs.length; i++) most = Math.max(most, logs[i] ?? most);
  if (most === Number.NEGATIVE_INFINITY) return most;
  let sum = 0;
  for (let i = 0; i < logs.length; i++) sum += Math.exp((logs[i] ?? Number.NEGATIVE_INFINITY) - most);
  return most + Math.log(sum);
}

/**
 * Chances that add up to 1, from the logarithms of weights in any common measure. Throws when no weight
 * is above zero: then nothing was possible, and the caller left out "none of these".
 */
export function chancesOf(logs: ArrayLike<number>): Float64Array {
  const all = logSumExp(logs);
  if (!Number.isFinite(all)) throw new Error(`No hypothesis of ${logs.length} has a finite weight`);
  return Float64Array.from(logs, (log) => Math.exp(log - all));
}
