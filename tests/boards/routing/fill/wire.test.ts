import { describe, expect, it } from 'vitest';
import { wireAreaMm2, wireDiameterMm } from '../../../../boards/routing/fill/wire';

/**
 * Published chart of American wire gauges: diameter in millimetres to three decimals, area in square
 * millimetres as printed. (Read in two conversion charts that agree but for the last digit.)
 */
const CHART: readonly (readonly [gauge: number, diameterMm: number, areaMm2: number])[] = [
  [10, 2.588, 5.26],
  [14, 1.628, 2.08],
  [16, 1.291, 1.31],
  [18, 1.024, 0.823],
  [20, 0.812, 0.519],
  [22, 0.644, 0.325],
  [24, 0.511, 0.205],
  [26, 0.405, 0.128],
  [28, 0.321, 0.08],
  [30, 0.255, 0.05],
];

describe('the gauge of a wire', () => {
  it.each(CHART)('AWG %i is %f mm thick and has %f mm²', (gauge, diameterMm, areaMm2) => {
    expect(Math.abs(wireDiameterMm(gauge) - diameterMm)).toBeLessThan(0.001);
    expect(Math.abs(wireAreaMm2(gauge) - areaMm2)).toBeLessThan(0.006);
  });

  it('is fixed at its two ends: 36 is 5 thousandths of an inch, 4/0 is 460 of them (ASTM B258)', () => {
    expect(wireDiameterMm(36)).toBeCloseTo(0.005 * 25.4, 12);
    expect(wireDiameterMm(-3)).toBeCloseTo(0.46 * 25.4, 9);
  });

  it('doubles in area every three gauges, nearly (rule of the trade; common practice, no source)', () => {
    for (const gauge of [18, 22, 26]) expect(wireAreaMm2(gauge) / wireAreaMm2(gauge + 3)).toBeCloseTo(2, 1);
  });

  it('is a whole number that somebody draws', () => {
    for (const gauge of [-4, 57, 22.5, Number.NaN])
      expect(() => wireDiameterMm(gauge)).toThrow('Expected a gauge from -3 to 56');
  });
});
