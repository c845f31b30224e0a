import { ok, type Result, refuse } from '../../boards/base/result';
import { ohmsSpanText, ohmsText } from '../../boards/findings/words/numbers';
import type { Parameter } from '../../boards/signals/parameter';
import { isTwoWays, TWO_WAYS } from './two-ways';

const NBSP = '\u00a0';
const UNITS = {
  V: { sign: 'V', name: 'volts', typed: /^V$/ },
  A: { sign: 'A', name: 'amps', typed: /^A$/ },
  // The letter omega and the older sign for ohms look alike and are two characters.
  ohm: { sign: 'Ω', name: 'ohms', typed: /^(?:\u03a9|\u2126|ohms?)$/ },
};

/** Past these no board is built: a slip of the keyboard, and nothing to reckon with. */
const BOUNDS = {
  V: { least: -60, most: 60 },
  A: { least: 0.001, most: 100 },
  ohm: { least: 0.001, most: 1e9 },
} as const;

const FACTORS: Readonly<Record<string, number>> = { m: 1e-3, '': 1, k: 1e3, K: 1e3, M: 1e6 };

/** "usually 150 Ω to 1 kΩ", "usually 4.75 to 5.25 V". */
export function usualWords(parameter: Parameter): string {
  return `usually ${rangeText(parameter)}`;
}

/** "ohms". */
export function unitName({ unit }: Parameter): string {
  return UNITS[unit].name;
}

function rangeText({ unit, low, high }: Parameter): string {
  if (unit === 'ohm') return ohmsSpanText(low, high);
  return `${signed(low)} to ${signed(high)}${NBSP}${UNITS[unit].sign}`;
}

function signed(value: number): string {
  return String(value).replace('-', '−');
}

/** A stated value as it is typed and shown: in its plain unit, all its figures. */
export function valueText(value: number): string {
  return signed(value);
}

/** A typed quantity of whatever size in a unit, or why it is none: "470", "4.7k", "4,7 kΩ", "−5 V". */
export function readQuantity(typed: string, unit: Parameter['unit']): Result<number, string> {
  const { name, typed: unitTyped } = UNITS[unit];
  const said = /^([-−+]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*([mkKM]?)\s*(\S*)$/u.exec(typed.trim());
  const [, digits = '', prefix = '', unitSaid = ''] = said ?? [];
  // Nobody measures thousands of volts here, so plain volts are told with tenths.
  if (isTwoWays(typed) && (unit === 'ohm' || prefix === 'm')) return refuse(TWO_WAYS);
  const value = Number(digits.replace('−', '-').replace(',', '.')) * (FACTORS[prefix] ?? Number.NaN);
  if (digits === '' || !Number.isFinite(value) || (unitSaid !== '' && !unitTyped.test(unitSaid)))
    return refuse(`This is no number of ${name}. Type one such as ${unit === 'ohm' ? '330 or 4.7k' : '5'}.`);
  return ok(Number(value.toPrecision(12)));
}

/** The same in the parameter's unit and within what a board can have. */
export function readValue(typed: string, { unit }: Parameter): Result<number, string> {
  const read = readQuantity(typed, unit);
  if (!read.ok) return read;
  const { sign } = UNITS[unit];
  const { least, most } = BOUNDS[unit];
  if (read.value >= least && read.value <= most) return read;
  const bounds =
    unit === 'ohm'
      ? `${ohmsText(least)} to ${ohmsText(most)}`
      : `${signed(least)} to ${signed(most)}${NBSP}${sign}`;
  return refuse(`No board has such a value. Type one from ${bounds}.`);
}

/** Said of a value that stands, but is worth a second look; nothing where it is usual. */
export function unusualWords(value: number, parameter: Parameter): string {
  const usual = value >= parameter.low && value <= parameter.high;
  return usual ? '' : `Outside of what is usual, ${rangeText(parameter)}. Look at it again.`;
}
