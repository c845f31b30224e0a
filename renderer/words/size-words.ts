import { ok, type Result, refuse } from '../../boards/base/result';
import type { Mm } from '../../boards/base/units';
import { LIMITS } from '../../boards/document/limits';

const MOST_PITCH_MM = 50;

/** "2.54": a length as it is typed. */
export function mmText(mm: Mm): string {
  return String(mm);
}

/** How many rows or columns were typed, or why that is no number of them. */
export function readCount(typed: string, what: 'rows' | 'columns'): Result<number, string> {
  const value = /^\d+$/.test(typed.trim()) ? Number(typed) : Number.NaN;
  if (value >= 1 && value <= LIMITS.gridSide) return ok(value);
  return refuse(`A header has 1 to ${LIMITS.gridSide} ${what}. Type a whole number of them.`);
}

/** A pitch in millimetres, or why it is none: "2.54", "2,54 mm". */
export function readPitch(typed: string): Result<Mm, string> {
  const [, digits = ''] = /^(\d{1,4}(?:[.,]\d{1,4})?)\s*(?:mm)?$/.exec(typed.trim()) ?? [];
  const value = digits === '' ? Number.NaN : Number(digits.replace(',', '.'));
  if (value > 0 && value <= MOST_PITCH_MM) return ok(value);
  return refuse(`A pitch is above 0 and up to ${MOST_PITCH_MM}\u00a0mm. Type one such as 2.54.`);
}
