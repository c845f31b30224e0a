import type { Span } from '../circuit/corner';
import type { Finding } from './finding';

/** What each measured field of a finding's data is called, with its unit at the end. */
const MEASURES: ReadonlyMap<string, string> = new Map([
  ['amps', 'amps'],
  ['leastAmps', 'leastAmps'],
  ['mostAmps', 'mostAmps'],
  ['oldMostAmps', 'oldMostAmps'],
  ['tripAmps', 'tripAmps'],
  ['watts', 'watts'],
  ['volts', 'volts'],
  ['reverseVolts', 'reverseVolts'],
  ['arrives', 'arrivesVolts'],
  ['byMm', 'byMm'],
]);

/** As fine as the solver is held against another one; what comes after is noise. */
const FIGURES = 6;

/**
 * The numbers that a finding rests on, each named with its unit: `amps`, `watts`, and of a span
 * `ampsUsual`, `ampsLow` and `ampsHigh`. Empty for a finding that rests on none.
 */
export function numbersOf(finding: Finding): Readonly<Record<string, number>> {
  const fields: readonly (readonly [string, unknown])[] = Object.entries(finding.data);
  return Object.fromEntries(
    fields.flatMap(([field, value]) => {
      const name = MEASURES.get(field);
      return name === undefined ? [] : named(name, value);
    }),
  );
}

function named(name: string, value: unknown): readonly (readonly [string, number])[] {
  const numbers = isSpan(value)
    ? ([
        [`${name}Usual`, value.usual],
        [`${name}Low`, value.low],
        [`${name}High`, value.high],
      ] as const)
    : typeof value === 'number'
      ? ([[name, value]] as const)
      : [];
  // What hangs in the air has no level, and JSON no infinity.
  return numbers
    .filter(([, number]) => Number.isFinite(number))
    .map(([key, number]) => [key, Number(number.toPrecision(FIGURES))] as const);
}

function isSpan(value: unknown): value is Span {
  return typeof value === 'object' && value !== null && 'usual' in value;
}
