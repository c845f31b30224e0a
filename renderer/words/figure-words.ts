import { ok, type Result, refuse } from '../../boards/base/result';

/** Commas that may part thousands, or stand before thousandths. */
const TWO_WAYS = /^[1-9]\d{0,2}(?:,\d{3})+$/u;

const FIGURES = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)$/u;

/** A typed number of a field whose label names the unit, or why it is none: "1200", "1.2", "1,2". */
export function readFigure(
  typed: string,
  { mayBe, expected }: { readonly mayBe: (value: number) => boolean; readonly expected: string },
): Result<number, string> {
  const said = typed.trim();
  if (TWO_WAYS.test(said))
    return refuse('This can be read in two ways. Type it without a comma, with a point before tenths.');
  const value = FIGURES.test(said) ? Number(said.replace(',', '.')) : Number.NaN;
  return mayBe(value) ? ok(value) : refuse(expected);
}

/** A typed number above nothing, or nothing where it is not known. */
export function readAmount(typed: string, most: number, unit: string): Result<number | null, string> {
  if (typed.trim() === '') return ok(null);
  const expected = `Type ${unit}, more than 0 and at most ${most}, or nothing.`;
  return readFigure(typed, { mayBe: (value) => value > 0 && value <= most, expected });
}
