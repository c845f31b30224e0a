import type { RangeEnd } from '../signals/parameters';

/** Which ends of the value ranges are taken together: all of the board's one way, all of the lead's one way. */
export interface Corner {
  readonly board: RangeEnd;
  readonly lead: RangeEnd;
}

export const USUAL: Corner = { board: 'usual', lead: 'usual' };

/**
 * The usual values and every pairing of ends. A board's stub and a lead's part meet in series, so
 * the extremes of a current or a level lie where each side is at one of its ends.
 */
export const CORNERS: readonly Corner[] = [
  USUAL,
  { board: 'strong', lead: 'strong' },
  { board: 'weak', lead: 'weak' },
  { board: 'strong', lead: 'weak' },
  { board: 'weak', lead: 'strong' },
];

/** Where every path lets most current through: the pair to ask about loads. */
export const LOAD_CORNERS: readonly Corner[] = CORNERS.slice(0, 2);

/** What a value is over all corners, in its own unit. */
export interface Span {
  readonly usual: number;
  readonly low: number;
  readonly high: number;
}

export function spanOf(valueAt: (corner: Corner) => number): Span {
  const values = CORNERS.map(valueAt);
  return { usual: values[0] ?? 0, low: Math.min(...values), high: Math.max(...values) };
}
