import type { Identification, SignalChance } from '../meter/identification';
import { kindIndex, pinKinds } from '../meter/pin-kinds';

/** The chances of every pin by kind of pin, at [post × kinds + kind], as risks are judged by. */
export function chancesByKind({ pins }: Identification): Float64Array {
  const size = pinKinds().length;
  const chances = new Float64Array(pins.length * size);
  pins.forEach(({ chances: rows }, post) => {
    for (const { signal, chance } of rows) chances[post * size + kindIndex(signal)] = chance;
  });
  return chances;
}

/** Places of the pins that stand, by their labels. */
export function postsByLabel({ pins }: Identification): ReadonlyMap<string, number> {
  return new Map(pins.map(({ pin }, post) => [pin, post]));
}

/** What could be at a pin, each with the index of its kind; empty for a pin that does not stand. */
export function kindsAt(
  { pins }: Identification,
  pin: string,
): readonly { readonly kind: number; readonly said: SignalChance }[] {
  const rows = pins.find((one) => one.pin === pin)?.chances ?? [];
  return rows.map((said) => ({ kind: kindIndex(said.signal), said }));
}
