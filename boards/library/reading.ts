import type { PinSource } from '../document/connector';

/** How far a statement can be relied on, by the way it was come by. */
const CONFIDENCE = { readInSource: 0.95, readInSecondary: 0.8, fromMemory: 0.6 } as const;

/** One place where something about pins was read, and how. */
export interface Reading {
  readonly source: PinSource;
  readonly confidence: number;
}

/** The document itself was open. "manual" is a board's own paper, "standard" anybody's. */
export function readIn(kind: 'standard' | 'manual', where: string): Reading {
  return { source: { kind, where }, confidence: CONFIDENCE.readInSource };
}

/** Somebody else's account of the document was read; the account is named in "where". */
export function readAbout(kind: 'standard' | 'manual', where: string): Reading {
  return { source: { kind, where }, confidence: CONFIDENCE.readInSecondary };
}

/** Known in the trade, with no paper at hand: the pin says so. */
export function recalled(kind: 'standard' | 'manual', where: string): Reading {
  return { source: { kind, where: `${where} (from memory)` }, confidence: CONFIDENCE.fromMemory };
}
