import type { Prior } from '../../document/prior';
import type { CauseId } from './causes';
import type { Fault } from './fault';

/** Where the weights of the faults come from. */
export const PRIOR_SOURCE = 'common practice, no source';

/** How often a cause is met among all that goes wrong at a bench, before anything was noticed. */
interface CauseShare {
  readonly cause: CauseId;
  readonly share: number;
}

/** The faults weighed as a bench has it. Of two factors for one cause the last counts; unknown causes do no harm. */
export function weighedBy(faults: readonly Fault[], priors: readonly Prior[]): readonly Fault[] {
  if (priors.length === 0) return faults;
  const factors = new Map<string, number>(priors.map(({ cause, factor }) => [cause, factor]));
  return faults.map((fault) => {
    const factor = factors.get(fault.cause);
    return factor === undefined ? fault : { ...fault, weight: fault.weight * factor };
  });
}

/** How many times as often as usual a build counts a cause; 1 where it says nothing of it. */
export function factorOf(
  { priors }: { readonly priors?: readonly Prior[] | undefined },
  cause: CauseId,
): number {
  return priors?.findLast((prior) => prior.cause === cause)?.factor ?? 1;
}

/** The shares of the causes, the most often met first; they add up to 1. */
export function sharesOf(faults: readonly Fault[]): readonly CauseShare[] {
  const weights = new Map<CauseId, number>();
  for (const { cause, weight } of faults) weights.set(cause, (weights.get(cause) ?? 0) + weight);
  const all = [...weights.values()].reduce((sum, weight) => sum + weight, 0);
  return [...weights]
    .map(([cause, weight]) => ({ cause, share: weight / all }))
    .sort((a, b) => b.share - a.share);
}
