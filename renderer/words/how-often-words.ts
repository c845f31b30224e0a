/** How often a cause is met here, against what is usual. A number between two steps is kept, and said as it is. */
const STEPS = [
  { factor: 10, words: 'much more often' },
  { factor: 3, words: 'more often' },
  { factor: 1, words: 'as usual' },
  { factor: 0.3, words: 'less often' },
  { factor: 0.1, words: 'much less often' },
] as const;

interface HowOften {
  readonly factor: number;
  readonly words: string;
}

export const USUAL_SHARES =
  'What is usual is common practice and has no source. This build counts it as you say here.';

/** The steps there are to choose from, the most often first, with the one that a build has by another way. */
export function stepsWith(factor: number): readonly HowOften[] {
  if (STEPS.some((step) => step.factor === factor)) return STEPS;
  const own = { factor, words: `${factor} times as often` };
  return [...STEPS, own].sort((a, b) => b.factor - a.factor);
}

/** What a suspect's row says of a cause that does not count as usual; undefined: as usual. */
export function weighedWords(factor: number): string | undefined {
  if (factor === 1) return undefined;
  const [much, some] = factor > 1 ? [factor >= 10, 'more often'] : [factor <= 0.1, 'less often'];
  return `${much ? 'much ' : ''}${some} here`;
}
