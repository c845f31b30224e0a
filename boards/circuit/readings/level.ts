import type { Volts } from '../../base/units';
import type { Span } from '../corner';

/** TTL thresholds, as the ATX 3.0 power supply design guide (336521) prints them for PS_ON#, Table 4-11. */
const LOW_MOST_VOLTS: Volts = 0.8;
const HIGH_LEAST_VOLTS: Volts = 2.0;

/** How an input reads a level: for certain, or depending on the board. */
export type Level = 'low' | 'high' | 'depends';

/** The level over all corners. An input that nothing touches is held high by its own pull-up. */
export function levelOf(volts: Span | undefined): Level {
  if (volts === undefined || volts.low >= HIGH_LEAST_VOLTS) return 'high';
  return volts.high <= LOW_MOST_VOLTS ? 'low' : 'depends';
}
