import { byIdentity } from '../base/by-identity';
import type { Mm } from '../base/units';
import type { BoardSheet } from '../document/board-sheet';
import { SIDES, type Side } from '../document/connector';
import { type Box, boxesCollide, connectorBox } from '../fit/geometry';
import type { LaidPlug } from '../fit/laid-plug';
import { nearIndex } from '../fit/near';

/** Two fingertips either side of a plug. Common practice, no source. */
const FINGER_MM: Mm = 4;

/** On how many sides another connector stands so near to a seated plug that fingers do not get in. */
export function hemmedSides(board: BoardSheet, { body, connector }: LaidPlug): number {
  return SIDES.filter((side) => {
    const room = beside(body, side);
    return connectorsNear(board)(room).some(
      (other) => other !== connector && boxesCollide(connectorBox(other), room),
    );
  }).length;
}

const connectorsNear = byIdentity(
  (board: BoardSheet) => nearIndex(board.connectors, connectorBox),
  (board) => [board.connectors],
);

function beside(body: Box, side: Side): Box {
  switch (side) {
    case 'top':
      return { ...body, bottomMm: body.topMm, topMm: body.topMm - FINGER_MM };
    case 'right':
      return { ...body, leftMm: body.rightMm, rightMm: body.rightMm + FINGER_MM };
    case 'bottom':
      return { ...body, topMm: body.bottomMm, bottomMm: body.bottomMm + FINGER_MM };
    case 'left':
      return { ...body, rightMm: body.leftMm, leftMm: body.leftMm - FINGER_MM };
  }
}
