/** Amounts of room on a disk, in words that belong together. */
export interface RoomWords {
  readonly needed: string;
  /** Null for nothing worth naming. */
  readonly free: string | null;
  readonly missing: string;
}

/** From what size an amount is told in a unit, and in steps of what size. Decimal units, as ISO 80000 has them. */
const UNITS = [
  { name: 'GB', fromBytes: 1e9, stepBytes: 1e8 },
  { name: 'MB', fromBytes: 1e6, stepBytes: 1e5 },
  { name: 'kB', fromBytes: 0, stepBytes: 1e3 },
] as const;

/**
 * What was needed, what is free and what is missing, all in one unit. Need is rounded up and room down, and the
 * difference is that of the rounded ones: whoever makes so much free has made enough.
 */
export function roomWords(room: { readonly neededBytes: number; readonly freeBytes: number }): RoomWords {
  const unit = UNITS.find(({ fromBytes }) => room.neededBytes >= fromBytes) ?? UNITS[2];
  const needed = Math.ceil(room.neededBytes / unit.stepBytes);
  const free = Math.floor(room.freeBytes / unit.stepBytes);
  const decimals = unit.name === 'kB' ? 0 : 1;
  const said = (steps: number) => `${(steps / 10 ** decimals).toFixed(decimals)}\u00a0${unit.name}`;
  return { needed: said(needed), free: free === 0 ? null : said(free), missing: said(needed - free) };
}
