import { seededRandom } from '../../boards/base/random';
import { dictionaryOf } from '../../boards/diagnosis/dictionary';
import type { Fault } from '../../boards/diagnosis/faults/fault';
import { sharesOf, weighedBy } from '../../boards/diagnosis/faults/priors';
import type { Trial } from '../../boards/diagnosis/trials/trial';
import { ranksOf, shareWithin, type ToldTrouble } from './ranks';
import { settledOf, settledWithin } from './settled';

/** By how much at most each cause is met more or less often than is taken. */
const FACTOR_MOST = 3;

interface Shaken {
  readonly three: number;
  readonly five: number;
  readonly settled: number;
}

/** The same figures with the weight of each cause drawn anew: how far they hang on weights that nobody has counted. */
export function shaken(
  faults: readonly Fault[],
  troubles: readonly ToldTrouble[],
  trials: readonly Trial[],
  { draws, seed }: { readonly draws: number; readonly seed: number },
): readonly Shaken[] {
  const random = seededRandom(seed);
  const causes = sharesOf(faults).map(({ cause }) => cause);
  return Array.from({ length: draws }, () => {
    const priors = causes.map((cause) => ({ cause, factor: FACTOR_MOST ** (2 * random() - 1) }));
    const dictionary = dictionaryOf(weighedBy(faults, priors));
    const ranks = ranksOf(dictionary, troubles);
    return {
      three: shareWithin(ranks, 3),
      five: shareWithin(ranks, 5),
      settled: settledWithin(settledOf(dictionary, troubles, trials), 3),
    };
  });
}
