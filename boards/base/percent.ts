const NBSP = '\u00a0';

/** "64 %", and never "100 %" for what is only nearly sure. */
export function percent(chance: number): string {
  if (chance > 0.9995) return `over 99.9${NBSP}%`;
  if (chance >= 0.995) return `${(Math.floor(chance * 1_000) / 10).toFixed(1)}${NBSP}%`;
  return chance > 0 && chance < 0.005 ? `under 1${NBSP}%` : `${Math.round(chance * 100)}${NBSP}%`;
}
