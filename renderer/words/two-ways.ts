/** Commas that may part thousands, or stand before thousandths. */
const EITHER = /^[-−+]?[1-9]\d{0,2}(?:,\d{3})+(?![\d,])/u;

/** Why a number is refused that may be a thousand times as large. */
export const TWO_WAYS = 'This can be read in two ways. Type it without a comma, with a point before tenths.';

export function isTwoWays(typed: string): boolean {
  return EITHER.test(typed.trim());
}
