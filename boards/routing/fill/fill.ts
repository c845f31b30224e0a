import type { Mm } from '../../base/units';
import type { Opening } from '../../document/tray';
import type { CableKind } from './laying';
import { roundAreaMm2 } from './wire';

/**
 * The share of an opening that cables may fill: 53 % by one, 31 % by two, 40 % by more.
 * Source: NFPA 70 (NEC), chapter 9, table 1 (read in notes that reproduce it). A law for conduits in
 * buildings; here it is borrowed as a measure of comfort: a cable that goes through without force, and
 * comes out again.
 */
const FILL_LIMITS = { one: 0.53, two: 0.31, more: 0.4 } as const;

/** Sums of areas are counted with this much to spare, for what adding up leaves behind the last digit. */
export const FILL_ROUNDING = 1e-9;

/** The open area, in square millimetres; of a round or oval opening that of the ellipse. */
export function openAreaMm2({ widthMm, heightMm, round }: Opening): number {
  return round === true ? (Math.PI / 4) * widthMm * heightMm : widthMm * heightMm;
}

/** The share of an opening that round cables fill, from 0; above 1 where they are more than it. */
export function fillOf(opening: Opening, diametersMm: readonly Mm[]): number {
  return diametersMm.reduce((sum, diameter) => sum + roundAreaMm2(diameter), 0) / openAreaMm2(opening);
}

/** The share that so many cables may fill by the published table. */
export function fillLimit(cables: number): number {
  if (cables <= 1) return FILL_LIMITS.one;
  return cables === 2 ? FILL_LIMITS.two : FILL_LIMITS.more;
}

/** More than the table lets so many of the cables in an opening fill: all of them, or the two thickest. */
export interface Overfill {
  readonly cables: number;
  readonly fill: number;
  readonly limit: number;
}

/**
 * What the cables in an opening do not keep to of the table; undefined where there is room for them. They keep
 * to it as well with whatever of them is laid before the others: three may fill 40 %, but then no two of them
 * more than 31 %. Without this a third cable would make room for two. (One alone may fill more than either.)
 */
export function overfillOf(opening: Opening, diametersMm: readonly Mm[]): Overfill | undefined {
  const whole = overBy(opening, diametersMm);
  if (whole !== undefined || diametersMm.length < 3) return whole;
  return overBy(opening, [...diametersMm].sort((a, b) => b - a).slice(0, 2));
}

function overBy(opening: Opening, diametersMm: readonly Mm[]): Overfill | undefined {
  const [fill, limit] = [fillOf(opening, diametersMm), fillLimit(diametersMm.length)];
  return fill > limit + FILL_ROUNDING ? { cables: diametersMm.length, fill, limit } : undefined;
}

/** True when the cables keep to the table. */
export function roomFor(opening: Opening, diametersMm: readonly Mm[]): boolean {
  return overfillOf(opening, diametersMm) === undefined;
}

/** Why a cable alone does not go through an opening. */
export type NoPassage =
  /** Thicker than the opening is narrow. */
  | { readonly code: 'too-narrow'; readonly diameterMm: Mm; readonly narrowMm: Mm }
  /** Alone it would fill more than the table allows. */
  | { readonly code: 'too-full'; readonly fill: number; readonly limit: number }
  /** Behind the tray there is less room than it is thick, however it bends. */
  | { readonly code: 'too-thick'; readonly diameterMm: Mm; readonly behindMm: Mm }
  /** Behind the tray there is less room than its bend takes. */
  | { readonly code: 'too-stiff'; readonly neededMm: Mm; readonly behindMm: Mm };

/**
 * What keeps a cable from an opening; undefined where nothing does. A cable that comes straight through the
 * tray and turns along it takes its inside bend radius and its own thickness of the room behind, where that is
 * known; where nobody has said how it bends, its thickness alone. Slanting through a long opening a cable may
 * get by with less: our own judgement is to plan without that.
 *
 * @param behindMm the room behind the tray, where it is known
 */
export function passageProblem(
  opening: Opening,
  { diameterMm, bendRadiusMm }: CableKind,
  behindMm?: Mm,
): NoPassage | undefined {
  const narrowMm = Math.min(opening.widthMm, opening.heightMm);
  if (diameterMm > narrowMm) return { code: 'too-narrow', diameterMm, narrowMm };
  const fill = fillOf(opening, [diameterMm]);
  if (!roomFor(opening, [diameterMm])) return { code: 'too-full', fill, limit: FILL_LIMITS.one };
  if (behindMm === undefined) return undefined;
  if (diameterMm > behindMm + FILL_ROUNDING) return { code: 'too-thick', diameterMm, behindMm };
  const neededMm = (bendRadiusMm ?? 0) + diameterMm;
  return neededMm > behindMm + FILL_ROUNDING ? { code: 'too-stiff', neededMm, behindMm } : undefined;
}
