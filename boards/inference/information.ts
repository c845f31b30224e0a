/** How open a question is, in bits: 0 when one chance is 1, log2 of the number when all are alike. Chances may be scaled. */
export function entropyBits(chances: ArrayLike<number>): number {
  let sum = 0;
  let weighed = 0;
  for (let i = 0; i < chances.length; i++) {
    const chance = chances[i] ?? 0;
    if (chance <= 0) continue;
    sum += chance;
    weighed += chance * Math.log2(chance);
  }
  return sum > 0 ? Math.max(0, Math.log2(sum) - weighed / sum) : 0;
}

/**
 * What the answer to a question is expected to tell about the hypotheses, in bits (mutual information):
 * how open the answer is, less how open it would stay if the hypothesis were known.
 *
 * @param chances of the hypotheses, adding up to 1
 * @param answers for each hypothesis the chances of every answer, in one common order
 */
export function gainBits(chances: ArrayLike<number>, answers: readonly ArrayLike<number>[]): number {
  const overall = new Float64Array(answers[0]?.length ?? 0);
  let known = 0;
  for (let i = 0; i < answers.length; i++) {
    const chance = chances[i] ?? 0;
    const row = answers[i];
    if (chance <= 0 || row === undefined) continue;
    for (let a = 0; a < overall.length; a++) overall[a] = (overall[a] ?? 0) + chance * (row[a] ?? 0);
    known += chance * entropyBits(row);
  }
  return Math.max(0, entropyBits(overall) - known);
}
