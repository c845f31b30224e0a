import type { Cell } from '../../document/grid';
import type { Drawn, Face } from './face';
import type { Shape } from './orientation';
import { shapeFactor } from './overlap';
import { GAP, type PinCode, UNKNOWN, UNSAID } from './pin-code';
import { KEY_WEIGHT, type Verdict, verdictOn, WORTH } from './verdict';

/** How many places of a connector compare how. */
export type Tally = Readonly<Record<Verdict, number>>;

export interface Score {
  /** From 0 to 1: what agrees of what is known here, each pin by its sureness, times how far the shapes agree. */
  readonly score: number;
  /** The sureness of all pins that agree, added up: of two like scores, which one says more. */
  readonly agreed: number;
}

/** A place of which something is known. */
export interface KnownPlace {
  readonly row: number;
  readonly col: number;
  readonly code: PinCode;
}

/** What of a connector can be compared at all. */
export function knownPlaces({ cols, codes }: Drawn): readonly KnownPlace[] {
  return codes.flatMap((code, at) =>
    code.signal === UNKNOWN ? [] : [{ row: Math.floor(at / cols), col: at % cols, code }],
  );
}

/**
 * How well a face that lies at an offset matches what is known here. Every pin known here counts by its own
 * sureness and that of the other side, a missing pin three times; one of which the other side says
 * nothing counts a quarter.
 */
export function scoreOf(here: Shape, known: readonly KnownPlace[], there: Face, [down, along]: Cell): Score {
  let sum = 0;
  let weights = 0;
  let agreed = 0;
  for (const { row, col, code: mine } of known) {
    const theirs = codeAt(there, row - down, col - along);
    const verdict = theirs === undefined ? 'unknown-there' : verdictOn(mine, theirs);
    const other = theirs === undefined || verdict === 'unknown-there' ? UNSAID.read : theirs.sureness;
    const key = mine.signal === GAP || theirs?.signal === GAP ? KEY_WEIGHT : 1;
    const weight = mine.sureness * other * key;
    weights += weight;
    if (verdict === 'agree') {
      sum += weight;
      agreed += mine.sureness;
    } else if (verdict === 'partly') sum += weight * WORTH.partly;
    else if (verdict === 'unknown-there') sum += weight * WORTH.unsaid;
  }
  return { score: weights === 0 ? 0 : (sum / weights) * shapeFactor(here, there), agreed };
}

/** How the places of a connector compare with a face, counted. */
export function tallyOf(here: Drawn, there: Face, [down, along]: Cell): Tally {
  const tally = { agree: 0, partly: 0, differ: 0, 'unknown-there': 0, 'unknown-here': 0, 'both-unknown': 0 };
  here.codes.forEach((mine, at) => {
    const theirs = codeAt(there, Math.floor(at / here.cols) - down, (at % here.cols) - along);
    const nothing = mine.signal === UNKNOWN ? 'both-unknown' : 'unknown-there';
    tally[theirs ? verdictOn(mine, theirs) : nothing] += 1;
  });
  return tally;
}

function codeAt(face: Face, row: number, col: number): PinCode | undefined {
  if (row < 0 || col < 0 || row >= face.rows || col >= face.cols) return undefined;
  return face.codes[row * face.cols + col];
}
