import { FAMILY } from '../../boards/library/families';

const WORDS: ReadonlyMap<string, string> = new Map([
  [FAMILY.pinHeader, 'open posts'],
  [FAMILY.mainPower, 'main power'],
  [FAMILY.cpuPower, 'CPU power'],
  [FAMILY.cardPower, 'graphics card power'],
  [FAMILY.peripheralPower, 'power of older drives'],
  [FAMILY.sataData, 'SATA data'],
  [FAMILY.sataPower, 'SATA power'],
  [FAMILY.usbC, 'USB Type-C, inside'],
]);

/** What a family of connectors is called; its own name where it is none of ours. */
export function familyWords(family: string): string {
  return WORDS.get(family) ?? family;
}

/** The families to choose from, and the one a connector has where it is none of them. */
export function familyChoices(family: string): readonly { readonly id: string; readonly label: string }[] {
  const ids = WORDS.has(family) ? [...WORDS.keys()] : [...WORDS.keys(), family];
  return ids.map((id) => ({ id, label: familyWords(id) }));
}
