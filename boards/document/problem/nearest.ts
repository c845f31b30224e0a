/**
 * How many letters have to be put in, left out, exchanged or swapped with a neighbour to get from one
 * word to the other (Damerau 1964, each letter moved once at most).
 */
function distance(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  const at = (i: number, j: number) => rows[i]?.[j] ?? 0;
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j++) {
      const exchanged = at(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(exchanged, at(i - 1, j) + 1, at(i, j - 1) + 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        row[j] = Math.min(at(i, j), at(i - 2, j - 2) + 1);
    }
  }
  return at(a.length, b.length);
}

/** The word that was probably meant; undefined when none is near. */
export function nearestOf(words: readonly string[], typed: string): string | undefined {
  if (typed.length > 64) return undefined;
  const typedLower = typed.toLowerCase();
  const ranked = words
    .map((word) => ({ word, far: distance(typedLower, word.toLowerCase()) }))
    .sort((a, b) => a.far - b.far);
  const [best] = ranked;
  return best !== undefined && best.far <= Math.max(1, typed.length / 3) ? best.word : undefined;
}
