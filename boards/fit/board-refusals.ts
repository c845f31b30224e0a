import { entryRefusals } from './entry';
import type { FitRefusal } from './fit';
import type { LaidPlug } from './laid-plug';
import { pinRefusals } from './pin-refusals';
import { roomRefusals } from './room';
import type { Carrier } from './seated-plug';

/** Everything about the board, or the unit, that keeps a plug from sitting there, whatever else is plugged in. */
export function boardRefusals(carrier: Carrier, laid: LaidPlug): readonly FitRefusal[] {
  const entry = entryRefusals(laid.plug, laid.connector, laid.seat.turn);
  return isForeign(entry) ? entry : [...entry, ...pinRefusals(laid), ...roomRefusals(carrier, laid)];
}

/** Whether the plug is made for other connectors altogether, so that no other reason counts. */
export function isForeign(refusals: readonly FitRefusal[]): boolean {
  return refusals.some(({ code }) => code === 'family' || code === 'pitch');
}
