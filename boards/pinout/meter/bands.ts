import type { Ohms, Volts } from '../../base/units';

/**
 * A reading of a meter falls into one of many narrow bands, so that what each signal would read is worked
 * out once and looked up ever after. Bands are narrower than the error of a usual meter.
 */
const PER_DECADE = 14;
const LOWEST_OHMS: Ohms = 0.1;
/** What a hand-held meter still shows; above it says "open" (common practice, no source). */
export const MOST_OHMS: Ohms = 20_000_000;
const DECADES = Math.log10(MOST_OHMS / LOWEST_OHMS);

/** The last band is "open". */
export const OHM_BANDS = Math.ceil(DECADES * PER_DECADE) + 1;
export const OPEN_BAND = OHM_BANDS - 1;

export function ohmBand(ohms: Ohms | 'open'): number {
  if (ohms === 'open' || ohms > MOST_OHMS) return OPEN_BAND;
  const band = Math.floor(Math.log10(Math.max(ohms, LOWEST_OHMS) / LOWEST_OHMS) * PER_DECADE);
  return Math.min(OPEN_BAND - 1, band);
}

/** Where a band of resistance begins. */
export function bandOhms(band: number): Ohms {
  return LOWEST_OHMS * 10 ** (band / PER_DECADE);
}

const BAND_VOLTS: Volts = 0.1;
/** Beyond it, either way, no pin of a board reads. */
export const MOST_VOLTS: Volts = 16;
const LEAST_VOLTS: Volts = -MOST_VOLTS;
export const VOLT_BANDS = 321;

export function voltBand(volts: Volts): number {
  return Math.max(0, Math.min(VOLT_BANDS - 1, Math.round((volts - LEAST_VOLTS) / BAND_VOLTS)));
}

/** The middle of a band of voltage. */
export function bandVolts(band: number): Volts {
  return LEAST_VOLTS + band * BAND_VOLTS;
}

/** The share of a normal distribution that lies below a value. Abramowitz and Stegun 26.2.17 (from memory). */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z > 0 ? 1 - tail : tail;
}
