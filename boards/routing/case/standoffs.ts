import type { Mm } from '../../base/units';
import type { MountingHole, Outline } from '../../document/outline';
import type { Standoff, Tray } from '../../document/tray';
import { onBoard } from './board-on-tray';

/** How far a place read with a ruler may be off, at both ends together (common practice, no source). */
const READ_TO_MM: Mm = 2;

/** Half the width of a standoff's head, which is 6 mm across at most (common practice, no source). */
const HEAD_RADIUS_MM: Mm = 3;

/** What one place of the tray is for the board. */
type StandoffUse =
  /** A hole of the board lies over it: it gets a standoff. */
  | { readonly kind: 'set'; readonly standoff: string; readonly hole: string }
  /** Under the board where no hole is: it stays empty, or its metal touches the underside. */
  | { readonly kind: 'empty'; readonly standoff: string }
  /** A hole is so near that the place may be measured wrong; its centre is that far away. */
  | { readonly kind: 'off'; readonly standoff: string; readonly hole: string; readonly byMm: Mm }
  /** Not under the board at all. */
  | { readonly kind: 'beside'; readonly standoff: string };

/** What has to be known before the board is laid on the tray. */
export type StandoffFinding =
  /** Metal under the board with no hole above it. `fixed`: it cannot be taken out. A doubt where nobody has looked. */
  | {
      readonly code: 'short';
      readonly level: 'danger' | 'doubt';
      readonly standoff: string;
      readonly fixed: boolean;
    }
  | {
      readonly code: 'off';
      readonly level: 'doubt';
      readonly standoff: string;
      readonly hole: string;
      readonly byMm: Mm;
    }
  /** A standoff under a hole whose published place is not sure. */
  | {
      readonly code: 'unsure-hole';
      readonly level: 'doubt';
      readonly standoff: string;
      readonly hole: string;
    }
  | { readonly code: 'unsupported'; readonly level: 'note'; readonly hole: string };

/** The places of the tray beside the holes of a board, or what is missing to tell. */
export type Standoffs =
  | { readonly kind: 'unknown'; readonly missing: 'holes' | 'standoffs' | 'board-place' }
  | {
      readonly kind: 'known';
      /** One for each place, in the tray's order. */
      readonly uses: readonly StandoffUse[];
      /** Holes with no standoff under them. */
      readonly without: readonly string[];
      /** The worst first. */
      readonly findings: readonly StandoffFinding[];
    };

/**
 * Which places of the tray get a standoff for the holes of this board, which must stay empty, and which
 * holes are left without one.
 *
 * @param unsure ids of the holes whose published places are not agreed on
 */
export function standoffsFor(outline: Outline, tray: Tray, unsure: readonly string[] = []): Standoffs {
  const { board, standoffs = [] } = tray;
  const { holes = [] } = outline;
  if (holes.length === 0) return { kind: 'unknown', missing: 'holes' };
  if (standoffs.length === 0) return { kind: 'unknown', missing: 'standoffs' };
  if (board === undefined) return { kind: 'unknown', missing: 'board-place' };
  const laid = standoffs.map((standoff) => ({ standoff, at: onBoard(standoff, board, outline) }));
  const taken = pairs(laid, holes);
  const uses = laid.map((each) => useOf(each, taken.get(each.standoff.id), holes, outline));
  const held = new Set(taken.values());
  const without = holes.map(({ id }) => id).filter((id) => !held.has(id));
  return { kind: 'known', uses, without, findings: findingsOf(uses, without, standoffs, new Set(unsure)) };
}

interface Point {
  readonly xMm: Mm;
  readonly yMm: Mm;
}

interface Laid {
  readonly standoff: Standoff;
  /** In the coordinates of the board as it is drawn. */
  readonly at: Point;
}

/** Hole under which each standoff sits: the nearest two first, each once, equals in the order of the sheet. */
function pairs(laid: readonly Laid[], holes: readonly MountingHole[]): ReadonlyMap<string, string> {
  const near = laid
    .flatMap(({ standoff, at }) =>
      holes.map((hole) => ({ standoff: standoff.id, hole: hole.id, apartMm: apart(at, hole) })),
    )
    .filter(({ apartMm }) => apartMm <= READ_TO_MM)
    .toSorted((a, b) => a.apartMm - b.apartMm);
  const taken = new Map<string, string>();
  const held = new Set<string>();
  for (const { standoff, hole } of near) {
    if (taken.has(standoff) || held.has(hole)) continue;
    taken.set(standoff, hole);
    held.add(hole);
  }
  return taken;
}

function useOf(
  { standoff: { id: standoff }, at }: Laid,
  hole: string | undefined,
  holes: readonly MountingHole[],
  outline: Outline,
): StandoffUse {
  if (hole !== undefined) return { kind: 'set', standoff, hole };
  const [nearest] = holes
    .map(({ id, xMm, yMm }) => ({ id, apartMm: apart(at, { xMm, yMm }) }))
    .toSorted((a, b) => a.apartMm - b.apartMm);
  if (nearest !== undefined && nearest.apartMm < READ_TO_MM + HEAD_RADIUS_MM)
    return { kind: 'off', standoff, hole: nearest.id, byMm: nearest.apartMm };
  const { xMm, yMm } = at;
  const under =
    xMm > -HEAD_RADIUS_MM &&
    yMm > -HEAD_RADIUS_MM &&
    xMm < outline.widthMm + HEAD_RADIUS_MM &&
    yMm < outline.depthMm + HEAD_RADIUS_MM;
  return { kind: under ? 'empty' : 'beside', standoff };
}

function findingsOf(
  uses: readonly StandoffUse[],
  without: readonly string[],
  standoffs: readonly Standoff[],
  unsure: ReadonlySet<string>,
): readonly StandoffFinding[] {
  const known = new Map(standoffs.map((each) => [each.id, each]));
  const found = uses.flatMap((use) => foundAt(use, known.get(use.standoff) ?? {}, unsure));
  const notes = without.map((hole): StandoffFinding => ({ code: 'unsupported', level: 'note', hole }));
  const isShort = ({ code }: StandoffFinding) => code === 'short';
  return [
    ...found.filter(({ level }) => level === 'danger'),
    ...found.filter((each) => each.level === 'doubt' && isShort(each)),
    ...found.filter((each) => each.level === 'doubt' && !isShort(each)),
    ...notes,
  ];
}

function foundAt(
  use: StandoffUse,
  { fixed, seen }: Pick<Standoff, 'fixed' | 'seen'>,
  unsure: ReadonlySet<string>,
): readonly StandoffFinding[] {
  const { kind, standoff } = use;
  if (kind === 'set')
    return unsure.has(use.hole) ? [{ code: 'unsure-hole', level: 'doubt', standoff, hole: use.hole }] : [];
  // Where nothing is, nothing touches the board.
  if (kind === 'beside' || seen === 'empty') return [];
  if (kind === 'off') return [{ code: 'off', level: 'doubt', standoff, hole: use.hole, byMm: use.byMm }];
  return [
    { code: 'short', level: fixed || seen === 'set' ? 'danger' : 'doubt', standoff, fixed: fixed === true },
  ];
}

function apart(one: Point, other: Point): Mm {
  return Math.hypot(one.xMm - other.xMm, one.yMm - other.yMm);
}
