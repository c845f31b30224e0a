import type { PinReading } from '../../document/pin-reading';
import { MOST_VOLTS } from './bands';
import { shareOf } from './evidence';
import type { Pair } from './pair-answers';
import type { Single } from './single-answers';

/** A reading is plausible where its chance is at least this share of the most probable reading's. */
const LEAST_SHARE = 1e-4;
/** Boards at the very end of a range are rare among those imagined: a little beyond still counts. */
const LENIENCE = 0.2;

/** Whether a row of answers has the reading among those that come about, misreadings left aside. */
export function plausibleRow(reading: PinReading, asked: Single | Pair, row: Float64Array): boolean {
  if (reading.kind === 'volts' && Math.abs(reading.volts) > MOST_VOLTS) return false;
  const most = row.reduce((a, b) => Math.max(a, b), 0);
  return shareOf(lenient(reading), asked)(row) >= LEAST_SHARE * most;
}

function lenient(reading: PinReading): PinReading {
  if (reading.kind !== 'ohms' && reading.kind !== 'volts') return reading;
  return { ...reading, tolerance: Math.max(LENIENCE, reading.tolerance ?? 0) };
}
