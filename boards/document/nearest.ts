/** How many letters have to be put in, left out or exchanged to get from one word to the other (Levenshtein, 1965). */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (let j = 0; j < b.length; j++) {
      const exchanged = (row[j] ?? 0) + (letter === b[j] ? 0 : 1);
      next.push(Math.min(exchanged, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
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
