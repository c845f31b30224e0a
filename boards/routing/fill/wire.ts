import type { Mm } from '../../base/units';

/**
 * The diameter of bare round wire of a gauge: 0.127 mm × 92^((36 − n) / 39).
 * Source: ASTM B258 (read in an encyclopaedia). Stranded wire of the same gauge is a little thicker, and
 * insulation comes on top.
 *
 * @param gauge AWG number; 0, −1, −2, −3 for 1/0, 2/0, 3/0, 4/0
 */
export function wireDiameterMm(gauge: number): Mm {
  if (!Number.isInteger(gauge) || gauge < -3 || gauge > 56)
    throw new RangeError(`Expected a gauge from -3 to 56, got ${gauge}`);
  return 0.127 * 92 ** ((36 - gauge) / 39);
}

/** The cross-section of bare round wire of a gauge, in square millimetres. */
export function wireAreaMm2(gauge: number): number {
  return roundAreaMm2(wireDiameterMm(gauge));
}

/** The area of a circle, in square millimetres. */
export function roundAreaMm2(diameterMm: Mm): number {
  return (Math.PI / 4) * diameterMm ** 2;
}
