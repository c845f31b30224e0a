import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bundleDiameter } from '../../../../boards/routing/fill/bundle';

/**
 * The radius of the least circle known round n circles of radius 1, printed cut off or rounded at the third
 * decimal (encyclopaedia table of circles packed in a circle, after Graham, Pirl, Melissen, Fodor,
 * Ekanayake and LaFountain; 15 to 18 best known, the others proved).
 */
const PUBLISHED: readonly (readonly [circles: number, radius: number])[] = [
  [2, 2],
  [3, 2.154],
  [4, 2.414],
  [5, 2.701],
  [6, 3],
  [7, 3],
  [8, 3.304],
  [9, 3.613],
  [10, 3.813],
  [11, 3.923],
  [12, 4.029],
  [13, 4.236],
  [14, 4.328],
  [15, 4.521],
  [16, 4.615],
  [17, 4.792],
  [18, 4.863],
  [19, 4.863],
];

const anyDiameters = fc.array(
  fc.integer({ min: 10, max: 140 }).map((tenths) => tenths / 10),
  {
    minLength: 1,
    maxLength: 30,
  },
);

const equal = (circles: number, diameterMm: number) => Array.from({ length: circles }, () => diameterMm);

describe('a bundle of cables', () => {
  it.each(PUBLISHED)('of %i equal ones is at least %f times as thick', (circles, radius) => {
    const { leastMm } = bundleDiameter(equal(circles, 2));
    expect(leastMm / 2).toBeGreaterThanOrEqual(radius);
    expect(leastMm / 2).toBeLessThan(radius + 0.0011);
  });

  it('of one is that one', () => {
    expect(bundleDiameter([6.5])).toEqual({ leastMm: 6.5, usualMm: 6.5 });
    expect(bundleDiameter([])).toEqual({ leastMm: 0, usualMm: 0 });
  });

  it('of two is both side by side, however unequal', () => {
    expect(bundleDiameter([3, 8]).leastMm).toBe(11);
    expect(bundleDiameter([8, 3]).usualMm).toBe(11);
  });

  it('has the published density: 19 fill 0.803 of the circle round them', () => {
    expect(19 / (bundleDiameter(equal(19, 2)).leastMm / 2) ** 2).toBeCloseTo(0.8032, 4);
  });

  it('is usually 1.2 times the root of the summed squares (common practice, no source)', () => {
    expect(bundleDiameter(equal(12, 3)).usualMm).toBeCloseTo(1.2 * Math.sqrt(12 * 9), 12);
  });

  it('is never told thinner than its area, than its two thickest, or than with one cable less', () => {
    fc.assert(
      fc.property(anyDiameters, (diametersMm) => {
        const { leastMm, usualMm } = bundleDiameter(diametersMm);
        const [first = 0, second = 0] = diametersMm.toSorted((a, b) => b - a);
        const squares = diametersMm.reduce((sum, diameter) => sum + diameter ** 2, 0);
        expect(leastMm).toBeGreaterThanOrEqual(first + second);
        expect(leastMm ** 2).toBeGreaterThanOrEqual(squares - 1e-9);
        expect(usualMm).toBeGreaterThanOrEqual(leastMm);
        expect(bundleDiameter(diametersMm.toReversed())).toEqual({ leastMm, usualMm });
        expect(leastMm).toBeGreaterThanOrEqual(bundleDiameter(diametersMm.slice(1)).leastMm);
      }),
    );
  });

  it('is of cables that are there', () => {
    expect(() => bundleDiameter([3, 0])).toThrow('Expected a diameter above 0 mm, got 0');
    expect(() => bundleDiameter([-3])).toThrow('Expected a diameter above 0 mm, got -3');
  });
});
