import { byIdentity } from '../base/by-identity';
import type { Mm } from '../base/units';
import type { Connector } from '../document/connector';
import { type Cell, rowPitchOf } from '../document/grid';
import { pinOf } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import { type Box, cellCentre, type Point } from './geometry';

/** One position of a connector on the board. */
export interface PinPoint {
  readonly pin: string;
  readonly cell: Cell;
  readonly centre: Point;
  /** The square post that stands there, or would. */
  readonly post: Box;
  /** Whether a pin stands there; a gap otherwise. */
  readonly stands: boolean;
}

/** Every position of a connector where it lies on the board, in counting order. */
export const pinPoints = byIdentity((connector: Connector): readonly PinPoint[] =>
  gridIndex(connector.grid).positions.map(({ label, cell }) => {
    const centre = cellCentre(connector, cell);
    const post = postRound(centre, Math.min(connector.grid.pitchMm, rowPitchOf(connector.grid)));
    return { pin: label, cell, centre, post, stands: pinOf(connector, label).missing !== true };
  }),
);

/** Posts are about a quarter of their pitch wide: 0.64 mm at 2.54 mm, 0.50 mm at 2.00 mm. */
function postRound({ xMm, yMm }: Point, pitchMm: Mm): Box {
  const half = pitchMm / 8;
  return { leftMm: xMm - half, topMm: yMm - half, rightMm: xMm + half, bottomMm: yMm + half };
}
