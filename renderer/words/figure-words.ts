import { ok, type Result, refuse } from '../../boards/base/result';
import { isTwoWays, TWO_WAYS } from './two-ways';

const FIGURES = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)$/u;

/** A typed number of a field whose label names the unit, or why it is none: "1200", "1.2", "1,2". */
export function readFigure(
  typed: string,
  { mayBe, expected }: { readonly mayBe: (value: number) => boolean; readonly expected: string },
): Result<number, string> {
  const said = typed.trim();
  if (isTwoWays(said)) return refuse(TWO_WAYS);
  const value = FIGURES.test(said) ? Number(said.replace(',', '.')) : Number.NaN;
  return mayBe(value) ? ok(value) : refuse(expected);
}

/** A typed number above nothing, or nothing where it is not known. */
export function readAmount(typed: string, most: number, unit: string): Result<number | null, string> {
  if (typed.trim() === '') return ok(null);
  const expected = `Type ${unit}, more than 0 and at most ${most}, or nothing.`;
  return readFigure(typed, { mayBe: (value) => value > 0 && value <= most, expected });
}
