import type { RangeEnd } from '../signals/parameters';

/** Which ends of the value ranges are taken together. */
export interface Corner {
  /** Rails of the board and what feeds a pin from them. */
  readonly feed: RangeEnd;
  /** The board's ways to ground: outputs that pull down, loads, the ground pins. */
  readonly back: RangeEnd;
  /** Wires and parts of the leads. */
  readonly lead: RangeEnd;
}

const corner = (feed: RangeEnd, back: RangeEnd, lead: RangeEnd): Corner => ({ feed, back, lead });

export const USUAL = corner('usual', 'usual', 'usual');

/**
 * The usual values and the pairings of ends where extremes lie. Most and least current flow where all
 * is at one end. A level is highest or lowest where what feeds it is at one end and what takes from it
 * at the other: the lead is on the one side of the pin or on the other.
 */
export const CORNERS: readonly Corner[] = [
  USUAL,
  corner('strong', 'strong', 'strong'),
  corner('weak', 'weak', 'weak'),
  corner('strong', 'weak', 'weak'),
  corner('weak', 'strong', 'strong'),
  corner('strong', 'strong', 'weak'),
  corner('weak', 'weak', 'strong'),
];

/** Where every path lets most current through: the pair to ask about loads. */
export const LOAD_CORNERS: readonly Corner[] = CORNERS.slice(0, 2);

/** What a value is over all corners, in its own unit. */
export interface Span {
  readonly usual: number;
  readonly low: number;
  readonly high: number;
}

/**
 * The usual value, and the lowest and highest over all corners. No theorem: that boards drawn at random
 * from inside the ranges stay within is tested for the lamps and inputs of the demo. The ends of the
 * board's feed and of its ways to ground are paired both ways because that test asked for it.
 */
export function spanOf(valueAt: (corner: Corner) => number): Span {
  return spanOfValues(CORNERS.map(valueAt));
}

/** The same of values that are worked out already, in the order of `CORNERS`. */
export function spanOfValues(values: readonly number[]): Span {
  return { usual: values[0] ?? 0, low: Math.min(...values), high: Math.max(...values) };
}
