import { ok, type Result, refuse } from '../../boards/base/result';
import type { Mm } from '../../boards/base/units';
import { count } from '../../boards/document/problem/shown-value';
import { isTwoWays, TWO_WAYS } from './two-ways';

const NBSP = '\u00a0';
const MM_PER_UNIT: Readonly<Record<string, Mm>> = { '': 1, mm: 1, cm: 10, in: 25.4, '"': 25.4, '″': 25.4 };

/** What a length may be. Sizes are more than nought; places may lie on either side of the edge. */
export interface LengthBounds {
  readonly leastMm: Mm;
  readonly mostMm: Mm;
}

export const SIZE_BOUNDS: LengthBounds = { leastMm: 0.01, mostMm: 1_000 };
export const PLACE_BOUNDS: LengthBounds = { leastMm: -1_000, mostMm: 1_000 };
export const HOLE_BOUNDS: LengthBounds = { leastMm: 0.01, mostMm: 50 };

/** "12.5 mm", "−3 mm", "1,000 mm". */
export function mmWords(mm: Mm): string {
  return `${signed(count(mm))}${NBSP}mm`;
}

/** A length as it is typed and shown in a field whose label names the unit: no commas, which would be read as points. */
export function mmFigures(mm: Mm): string {
  return signed(String(mm));
}

function signed(figures: string): string {
  return figures.replace('-', '−');
}

/** A typed length in millimetres, to the hundredth, or why it is none: "12", "12,5 mm", "0.5 in", "−3". */
export function readLength(typed: string, { leastMm, mostMm }: LengthBounds): Result<Mm, string> {
  if (isTwoWays(typed)) return refuse(TWO_WAYS);
  const said = /^([-−+]?)(\d+(?:[.,]\d*)?|[.,]\d+)\s*(mm|cm|in|"|″)?$/u.exec(typed.trim());
  const [, sign = '', digits = '', unit = ''] = said ?? [];
  const value = Number(digits.replace(',', '.')) * (MM_PER_UNIT[unit] ?? Number.NaN);
  if (digits === '' || !Number.isFinite(value))
    return refuse(`This is no length. Type millimetres such as 12.5, or inches such as 0.5${NBSP}in.`);
  const mm = Math.round((sign === '' || sign === '+' ? value : -value) * 100) / 100 + 0;
  if (mm >= leastMm && mm <= mostMm) return ok(mm);
  return refuse(
    leastMm > 0
      ? `A size is more than 0 and at most ${mmWords(mostMm)}. Type one in between.`
      : `A place is at most ${mmWords(mostMm)} away from the corner. Type one from ${signed(count(leastMm))} to ${mmWords(mostMm)}.`,
  );
}
