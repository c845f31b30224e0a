import type { Turn } from '../base/units';
import type { Build, Seat } from './build';
import { unitWith } from './lookup';

/**
 * How a plug is turned before the eyes, against its connector. Only the board is mirrored with the view; in its
 * mirror image what is turned to the right is seen turned to the left.
 */
export function seenTurn(build: Build, { connector, turn }: Pick<Seat, 'connector' | 'turn'>): Turn {
  const mirrored = build.view.mirrored && !unitWith(build, connector);
  if (!mirrored) return turn;
  return turn === 90 ? 270 : turn === 270 ? 90 : turn;
}
