/**
 * Flavoured numbers: a plain number may become a length or a voltage, but a length can
 * never be handed over as a voltage. The compiler holds it; nothing is left at run time.
 */
export type Mm = number & { readonly unit?: 'mm' };
export type Volts = number & { readonly unit?: 'V' };
export type Amps = number & { readonly unit?: 'A' };
export type Ohms = number & { readonly unit?: 'ohm' };

/** A quarter turn clockwise, seen from above the component side. */
export type Turn = 0 | 90 | 180 | 270;

export const TURNS = [0, 90, 180, 270] as const satisfies readonly Turn[];

/** The sum of two turns, back in 0 to 270. */
export function addTurns(first: Turn, second: Turn): Turn {
  return TURNS[((first + second) / 90) % 4] ?? 0;
}
