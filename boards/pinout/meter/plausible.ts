import type { PinReading } from '../../document/pin-reading';
import { shareOf } from './evidence';
import type { Pair } from './pair-answers';
import type { Single } from './single-answers';

/** A reading is plausible where its chance is at least this share of the most probable reading's. */
const LEAST_SHARE = 1e-3;

/** Whether a row of answers has the reading among those that come about, misreadings left aside. */
export function plausibleRow(reading: PinReading, asked: Single | Pair, row: Float64Array): boolean {
  const most = row.reduce((a, b) => Math.max(a, b), 0);
  return shareOf(reading, asked)(row) >= LEAST_SHARE * most;
}
