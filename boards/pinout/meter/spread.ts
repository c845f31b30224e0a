import { type ParameterId, parameterOf } from '../../signals/parameters';

/**
 * The value of a parameter that a share of all boards stays below: a triangle over its range with the peak
 * at the usual value, along the logarithm where every value is above zero. That boards gather round the
 * usual value this way is common practice, no source.
 *
 * @param share from 0 to 1
 * @returns in the parameter's own unit
 */
export function valueBelow(id: ParameterId, share: number): number {
  const { low, usual, high } = parameterOf(id);
  if (low > 0) return Math.exp(triangle(Math.log(low), Math.log(usual), Math.log(high), share));
  return triangle(low, usual, high, share);
}

/** The inverse of the distribution function of a triangle. */
function triangle(low: number, peak: number, high: number, share: number): number {
  const width = high - low;
  if (width === 0) return low;
  const before = (peak - low) / width;
  if (share <= before) return low + Math.sqrt(share * width * (peak - low));
  return high - Math.sqrt((1 - share) * width * (high - peak));
}

/** Boards that are imagined for each signal. */
export const BOARDS = 128;

/**
 * For each imagined board, a share for each of several parameters, spread evenly over all combinations:
 * the additive sequence of Roberts (2018), from memory, whose step is a power of the root of x^(d+1) = x + 1.
 */
export function evenShares(parameters: number): readonly (readonly number[])[] {
  let root = 2;
  for (let i = 0; i < 32; i++) root = (1 + root) ** (1 / (parameters + 1));
  return Array.from({ length: BOARDS }, (_, board) =>
    Array.from({ length: parameters }, (__, at) => (0.5 + (board + 1) * root ** -(at + 1)) % 1),
  );
}
