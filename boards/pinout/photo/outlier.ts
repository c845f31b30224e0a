import type { Mm } from '../../base/units';
import type { PointPair } from './homography';
import { type Matrix3, mapped } from './matrix3';

/** A way to lay a map through points, and how many unknowns it has. */
export interface Fit {
  readonly map: (pairs: readonly PointPair[]) => Matrix3 | undefined;
  readonly unknowns: number;
}

/** Which point does not agree, by its place in the list. */
export type Outlier =
  | { readonly kind: 'one'; readonly at: number }
  | { readonly kind: 'one-of'; readonly candidates: readonly number[] }
  | { readonly kind: 'several' };

/** The squares of a map that there is not. */
const NONE = Number.POSITIVE_INFINITY;

/** A steady hand points at a pin to about a pixel, or to this share of the pitch in a close picture. */
const POINTING_PX = 1;
const POINTING_OF_PITCH = 0.03;
/** What is known of the hand beforehand counts as much as this many measured values. */
const PRIOR_WEIGHT = 4;
/** How much better, in variances for each of two values, the rest has to agree without a point that is off. */
const BAD = 12;
/** Leaving out another point that does nearly as well: the points do not tell the two apart. */
const ALIKE = 5;
/** When the rest is off by more than this many times the hand, leaving out one point was no help. */
const STILL_OFF = 4;

/** How far a point usually lies from its pin, in pixels of this picture. */
export function pointingPx(pairs: readonly PointPair[], pitchMm: Mm): number {
  const [first, ...others] = pairs;
  if (first === undefined) return POINTING_PX;
  const px = others.reduce((sum, { to }) => sum + Math.hypot(to.x - first.to.x, to.y - first.to.y), 0);
  const mm = others.reduce(
    (sum, { from }) => sum + Math.hypot(from.x - first.from.x, from.y - first.from.y),
    0,
  );
  return Math.max(POINTING_PX, mm > 0 ? (POINTING_OF_PITCH * pitchMm * px) / mm : 0);
}

/**
 * Looks for one point that does not agree with the others: each is left out in turn, and the squares that
 * are left are compared, as deletion residuals are (Cook and Weisberg, Residuals and Influence in
 * Regression). Null where all agree.
 */
export function doubtOf(
  { map, unknowns }: Fit,
  pairs: readonly PointPair[],
  usualPx: number,
): Outlier | null {
  const spare = 2 * pairs.length - unknowns;
  if (spare <= 0) return null;
  const all = squares(map(pairs), pairs);
  const without = pairs.map((_, left) => {
    const rest = pairs.filter((__, at) => at !== left);
    return 2 * rest.length < unknowns ? NONE : squares(map(rest), rest);
  });
  const best = without.indexOf(Math.min(...without));
  const least = without[best] ?? all;
  const usual = PRIOR_WEIGHT * usualPx * usualPx;
  const restSpare = Math.max(0, spare - 2);
  const variance = (least + usual) / (restSpare + PRIOR_WEIGHT);
  if (all - least <= 2 * BAD * variance) return tooFar(all, spare, usualPx) ? { kind: 'several' } : null;
  if (restSpare > 0 && tooFar(least, restSpare, usualPx)) return { kind: 'several' };
  const candidates = [...without.keys()].filter((at) => (without[at] ?? all) - least <= 2 * ALIKE * variance);
  return candidates.length === 1 ? { kind: 'one', at: best } : { kind: 'one-of', candidates };
}

function tooFar(sum: number, spare: number, usualPx: number): boolean {
  return sum / spare > (STILL_OFF * usualPx) ** 2;
}

function squares(matrix: Matrix3 | undefined, pairs: readonly PointPair[]): number {
  if (matrix === undefined) return NONE;
  const sum = pairs.reduce((before, { from, to }) => {
    const at = mapped(matrix, from);
    return before + (to.x - at.x) ** 2 + (to.y - at.y) ** 2;
  }, 0);
  return Number.isNaN(sum) ? NONE : sum;
}
