import type { Amps, Ohms, Volts } from '../../base/units';
import type { Span } from '../../circuit/corner';

const NBSP = '\u00a0';

/** Two figures are all that the ranges behind them bear. */
function figures(value: number): string {
  return String(Number(value.toPrecision(2))).replace('-', '−');
}

/** "9.4 mA", "1.3 A", "less than 0.1 mA". */
export function ampsText(amps: Amps): string {
  if (amps >= 0.995) return `${figures(amps)}${NBSP}A`;
  return amps < 1e-4 ? `less than 0.1${NBSP}mA` : `${figures(amps * 1e3)}${NBSP}mA`;
}

/** As above, and below a tenth of a milliampere "3 µA": where one state is told and no range. */
export function smallAmpsText(amps: Amps): string {
  return amps < 1e-4 ? `${figures(amps * 1e6)}${NBSP}µA` : ampsText(amps);
}

/** "6 to 14 mA": the least and the most over usual boards. */
export function ampsSpanText({ low, high }: Span): string {
  const [least, most] = [ampsText(Math.max(0, low)), ampsText(high)];
  if (least === most) return most;
  const [number, unit] = least.split(NBSP);
  return most.endsWith(`${NBSP}${unit}`) ? `${number} to ${most}` : `${least} to ${most}`;
}

/** Hundredths are the finest that a bench meter and the ranges tell of a level. */
function voltFigures(volts: Volts): string {
  return Math.abs(volts) < 0.005 ? '0' : figures(Math.abs(volts) < 0.1 ? Number(volts.toFixed(2)) : volts);
}

/** "0.03 V", "−5.2 to −4.7 V". */
export function voltsSpanText({ low, high }: Span): string {
  const [least, most] = [voltFigures(low), voltFigures(high)];
  return least === most ? `${most}${NBSP}V` : `${least} to ${most}${NBSP}V`;
}

export function voltsExactText(volts: Volts): string {
  return `${voltFigures(volts)}${NBSP}V`;
}

const OHM_UNITS = [
  [1e6, 'MΩ'],
  [1e3, 'kΩ'],
  [1, 'Ω'],
] as const;

/** "330 Ω", "10 kΩ". */
export function ohmsText(ohms: Ohms): string {
  const [size, unit] = OHM_UNITS.find(([least]) => ohms >= least) ?? [1, 'Ω'];
  return `${figures(ohms / size)}${NBSP}${unit}`;
}

/** "150 Ω to 1 kΩ", "1 to 100 Ω". */
export function ohmsSpanText(low: Ohms, high: Ohms): string {
  const [least, most] = [ohmsText(low), ohmsText(high)];
  const [number, unit] = least.split(NBSP);
  return most.endsWith(`${NBSP}${unit}`) ? `${number} to ${most}` : `${least} to ${most}`;
}

/** "12 W". */
export function wattsText(watts: number): string {
  return `${figures(watts)}${NBSP}W`;
}

/** A further sentence where a fuse would trip; nothing where none does. */
export function fuseText(tripAmps: Amps | undefined): string {
  return tripAmps === undefined
    ? ''
    : ` The resettable fuse behind it would trip, at about ${ampsText(tripAmps)}, and everything on it goes dead.`;
}
