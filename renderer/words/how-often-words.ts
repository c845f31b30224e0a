import { oftenWords } from '../../boards/document/prior';

/** How often a cause is met here, against what is usual. A number between two steps is kept, and said as it is. */
const STEPS: readonly HowOften[] = [10, 3, 1, 0.3, 0.1].map((factor) => ({
  factor,
  words: oftenWords(factor),
}));

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
  return factor === 1 ? undefined : `${oftenWords(factor)} here`;
}
