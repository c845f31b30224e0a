import { chancesOf } from './log-space';

/**
 * What is held of a list of hypotheses that exclude each other: the logarithm of a weight for each, in the
 * order of the list. Only the differences count until `chancesOf` brings them to a sum of 1.
 */
export type Belief = Float64Array;

/** A belief before anything was observed. Weights need not add up to 1; one of 0 is never believed again. */
export function beliefFrom(weights: readonly number[]): Belief {
  return Float64Array.from(weights, Math.log);
}

/**
 * Bayes' rule: a belief after an observation, from the chance of that observation under each hypothesis.
 * The old belief is left as it was. Throws when the lists are not as long as each other.
 */
export function observed(belief: Belief, likelihoods: ArrayLike<number>): Belief {
  if (likelihoods.length !== belief.length)
    throw new Error(`${likelihoods.length} likelihoods for ${belief.length} hypotheses`);
  return belief.map((log, at) => log + Math.log(likelihoods[at] ?? 0));
}

/**
 * The chance of an observation that may have been misread: with the chance `misread` it says nothing about
 * the hypothesis and is drawn from what readings look like in general.
 */
export function mayBeMisread(likelihood: number, inGeneral: number, misread: number): number {
  return (1 - misread) * likelihood + misread * inGeneral;
}

/** The most believed first: index and chance. */
export function ranked(belief: Belief): readonly { readonly index: number; readonly chance: number }[] {
  return [...chancesOf(belief)]
    .map((chance, index) => ({ index, chance }))
    .sort((a, b) => b.chance - a.chance || a.index - b.index);
}
