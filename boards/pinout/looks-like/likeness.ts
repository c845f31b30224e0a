import type { Cell } from '../../document/grid';
import { rowPitchOf } from '../../document/grid';
import { gridIndex } from '../../document/numbering';
import { type Drawn, drawn } from './face';
import type { KnownLayout, Layout } from './known-layout';
import { laidPins } from './laid-over';
import { type IndexedFace, layoutIndex } from './layout-index';
import { ORIENTATIONS, type Orientation } from './orientation';
import { offsetsOf } from './overlap';
import { isKnown } from './pin-code';
import { knownPlaces, type Score, scoreOf, type Tally, tallyOf } from './score';

/** A known layout, laid over a connector as it fits best. */
export interface Likeness extends Score {
  readonly layout: KnownLayout;
  /** Others that cannot be told from it: the same signals in the same places. */
  readonly also: readonly KnownLayout[];
  readonly orientation: Orientation;
  /** The cell here on which the first cell of the turned layout lies; outside the grid where it is larger. */
  readonly offset: Cell;
  readonly tally: Tally;
  readonly sameShape: boolean;
  readonly samePitch: boolean;
  /** Whether every place that both have bears the same number. */
  readonly sameNumbers: boolean;
}

/** What came of a comparison with everything known. */
export type LooksLike =
  /** Nothing is known of any pin here, so everything would match. */
  | { readonly outcome: 'nothing-known' }
  /** The nearest are given all the same: to be looked at, not to be relied on. */
  | { readonly outcome: 'none-close'; readonly nearest: readonly Likeness[] }
  /** Best first. The first "tied" match what is known here equally well. */
  | { readonly outcome: 'found'; readonly likenesses: readonly Likeness[]; readonly tied: number };

/** Below this a likeness is chance. */
export const CLOSE = 0.65;
const NEAREST = 3;
/** Below this nothing is near, and there is nothing to look at. */
export const NEAR = 0.3;
/** Scores are sums of products: what differs by less is rounding. */
const EPSILON = 1e-9;

/**
 * Compares a connector with known layouts in every turn and mirror. Of each layout only the orientations
 * that match best are kept; those that cannot be told apart are one entry.
 */
export function looksLike(here: Layout, layouts: readonly KnownLayout[]): LooksLike {
  if (!here.pins.some(isKnown)) return { outcome: 'nothing-known' };
  const found = bestOfEach(drawn(here), layouts).sort(compareScores);
  const close = ranked(here, merged(found.filter(({ score }) => score >= CLOSE))).filter(moreAgree);
  const first = close[0];
  if (first === undefined)
    return {
      outcome: 'none-close',
      nearest: ranked(here, merged(found.filter(({ score }) => score >= NEAR)).slice(0, NEAREST)),
    };
  return {
    outcome: 'found',
    likenesses: close,
    tied: close.filter((each) => compareScores(first, each) === 0).length,
  };
}

/** A key alone lifts a score high; it is no likeness while as many pins speak against it. */
function moreAgree({ tally }: Likeness): boolean {
  return tally.agree > tally.differ;
}

interface Laid extends IndexedFace, Score {
  readonly offset: Cell;
}

/** Every layout as it matches best: several times where several orientations match equally well. */
function bestOfEach(here: Drawn, layouts: readonly KnownLayout[]): Laid[] {
  const known = knownPlaces(here);
  const best = new Map<KnownLayout, Laid[]>();
  for (const { rows, cols, faces } of layoutIndex(layouts)) {
    for (const offset of offsetsOf(here, { rows, cols })) {
      for (const { layout, face } of faces) {
        const { score, agreed } = scoreOf(here, known, face, offset);
        const laid = { layout, face, offset, score, agreed };
        const others = best.get(layout);
        const order = others?.[0] === undefined ? -1 : compareScores(laid, others[0]);
        if (order < 0) best.set(layout, [laid]);
        else if (order === 0) others?.push(laid);
      }
    }
  }
  return layouts.flatMap((layout) => best.get(layout) ?? []);
}

/** Those that cannot be told apart as one, under the name of the first. */
function merged(found: readonly Laid[]): readonly (Laid & Pick<Likeness, 'also'>)[] {
  const alike = new Map<string, Laid & { readonly also: KnownLayout[] }>();
  for (const laid of found) {
    const key = `${laid.face.key} @ ${laid.offset}`;
    const first = alike.get(key);
    if (first === undefined) alike.set(key, { ...laid, also: [] });
    else first.also.push(laid.layout);
  }
  return [...alike.values()];
}

function ranked(here: Layout, found: ReturnType<typeof merged>): readonly Likeness[] {
  return found
    .map(({ face, ...laid }): Likeness => {
      const { orientation, rows, cols } = face;
      return {
        ...laid,
        orientation,
        tally: tallyOf(drawn(here), face, laid.offset),
        sameShape: rows === here.grid.rows && cols === here.grid.cols,
        samePitch: samePitch(here, laid.layout.connector, orientation),
        sameNumbers: laidPins(laid.layout.connector, { orientation, offset: laid.offset }).every(
          ({ cell, pin }) => {
            const label = gridIndex(here.grid).labelAt(cell);
            return label === undefined || label === pin.pin;
          },
        ),
      };
    })
    .sort(inRank);
}

function samePitch(here: Layout, there: Layout, { turn }: Orientation): boolean {
  const pitches = [there.grid.pitchMm, rowPitchOf(there.grid)];
  const [along, across] = turn % 180 === 0 ? pitches : pitches.reverse();
  // The pitch across says nothing where there is one row.
  const alongSame = here.grid.cols === 1 || here.grid.pitchMm === along;
  return alongSame && (here.grid.rows === 1 || rowPitchOf(here.grid) === across);
}

/** The better match first; 0 where what is known here does not tell them apart. */
function compareScores(a: Score, b: Score): number {
  return apart(b.score - a.score) || apart(b.agreed - a.agreed);
}

/** How many of them match as well as this one or better, itself included. */
export function asGoodAs(likeness: Score, likenesses: readonly Score[]): number {
  return likenesses.filter((each) => compareScores(each, likeness) <= 0).length;
}

function apart(difference: number): number {
  return Math.abs(difference) < EPSILON ? 0 : difference;
}

/** Among equal matches: the same pitch, the same numbers, the likeliest way to lie, the order of the list. */
function inRank(a: Likeness, b: Likeness): number {
  return (
    compareScores(a, b) ||
    Number(b.samePitch) - Number(a.samePitch) ||
    Number(b.sameNumbers) - Number(a.sameNumbers) ||
    likelihood(a.orientation) - likelihood(b.orientation)
  );
}

function likelihood({ turn, mirrored }: Orientation): number {
  return ORIENTATIONS.findIndex((each) => each.turn === turn && each.mirrored === mirrored);
}
