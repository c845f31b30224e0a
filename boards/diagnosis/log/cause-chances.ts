import type { Dictionary } from '../dictionary';
import type { CauseId } from '../faults/causes';
import { type Evidence, type Standing, standingOf } from '../posterior';

/** The chance of each cause alone. */
export function causeChances(dictionary: Dictionary, evidence: Evidence): ReadonlyMap<CauseId, number> {
  return chancesBy(dictionary.hypotheses, standingOf({ dictionary, evidence }));
}

export function chancesBy(
  hypotheses: Dictionary['hypotheses'],
  { chances }: Pick<Standing, 'chances'>,
): ReadonlyMap<CauseId, number> {
  const sums = new Map<CauseId, number>();
  hypotheses.forEach(({ faults: [first, second] }, at) => {
    if (first && !second) sums.set(first.cause, (sums.get(first.cause) ?? 0) + (chances[at] ?? 0));
  });
  return sums;
}
