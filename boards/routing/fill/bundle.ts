import type { Mm } from '../../base/units';

/**
 * The radius of the least circle round n equal circles of radius 1, from n = 1. Proved for 1 to 14 and 19,
 * the best known for 15 to 18 (Graham, Pirl, Melissen, Fodor, Ekanayake and LaFountain; Goldberg, Reis;
 * read in an encyclopaedia). Where no closed form is known, the third decimal rounded up, so that a
 * bundle is never told thinner than it can be.
 */
const LEAST_RADIUS: readonly number[] = [
  1,
  2,
  1 + 2 / Math.sqrt(3),
  1 + Math.SQRT2,
  1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5))),
  3,
  3,
  1 + 1 / Math.sin(Math.PI / 7),
  1 + Math.sqrt(2 * (2 + Math.SQRT2)),
  3.814,
  1 + 1 / Math.sin(Math.PI / 9),
  4.03,
  2 + Math.sqrt(5),
  4.329,
  1 + Math.sqrt(6 + 2 / Math.sqrt(5) + 4 * Math.sqrt(1 + 2 / Math.sqrt(5))),
  4.616,
  4.793,
  1 + Math.SQRT2 + Math.sqrt(6),
  1 + Math.SQRT2 + Math.sqrt(6),
];

/** The share of a circle that equal circles inside it can fill at most: that of the endless honeycomb. */
const DENSEST = Math.PI / Math.sqrt(12);

/**
 * How thick round cables are when they are tied together.
 *
 * `leastMm`: no bundle of them is thinner, as far as is known. Up to 19 equal cables are packed as well as is
 * known; of unequal ones it is the largest of what their two thickest, their thickest few and their area at
 * the density of a honeycomb ask for, which no bundle reaches. `usualMm`: what to expect of a bundle tied by hand: 1.2 × √(sum of the squares), never
 * below the least; a rule of the trade, from memory.
 *
 * @throws RangeError on a diameter that is not above 0
 */
export function bundleDiameter(diametersMm: readonly Mm[]): { readonly leastMm: Mm; readonly usualMm: Mm } {
  for (const diameter of diametersMm)
    if (!(diameter > 0 && Number.isFinite(diameter)))
      throw new RangeError(`Expected a diameter above 0 mm, got ${diameter}`);
  const sorted = [...diametersMm].sort((a, b) => b - a);
  const squares = sorted.reduce((sum, diameter) => sum + diameter ** 2, 0);
  const leastMm = leastDiameter(sorted, squares);
  if (diametersMm.length < 2) return { leastMm, usualMm: leastMm };
  return { leastMm, usualMm: Math.max(leastMm, 1.2 * Math.sqrt(squares)) };
}

/** @param sorted from the thickest to the thinnest */
function leastDiameter(sorted: readonly Mm[], squares: number): Mm {
  const [first = 0, second = 0] = sorted;
  // The bundle holds its thickest few, and so as many as thick as the thinnest of those.
  const packed = LEAST_RADIUS.map((radius, at) => radius * (sorted[at] ?? 0));
  const byArea = sorted.length > 1 ? Math.sqrt(squares / DENSEST) : first;
  return Math.max(first + second, byArea, ...packed);
}
