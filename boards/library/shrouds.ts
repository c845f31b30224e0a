import type { Shroud, Side } from '../document/connector';

/** Walls all round, with the slot, latch or L-key on one side. */
export function box(guide: Side): Shroud {
  return { walls: ['top', 'right', 'bottom', 'left'], guide };
}

/** One wall, which a plug's rib has to face; open at both ends, so a plug may still sit a pin too far. */
export function ramp(side: Side): Shroud {
  return { walls: [side], guide: side };
}
