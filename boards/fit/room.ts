import { byIdentity } from '../base/by-identity';
import type { BoardSheet } from '../document/board-sheet';
import type { Build } from '../document/build';
import type { Connector, Side } from '../document/connector';
import { rowPitchOf } from '../document/grid';
import { pinOf, samePlug } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import type { FitRefusal } from './fit';
import { type Box, boxesCollide, boxHolds, cellCentre, cellUnder, connectorBox, plugBox } from './geometry';
import { nearIndex } from './near';
import { type SeatedPlug, seatedPlugs, wiringOf } from './seated-plug';

/** What keeps the plug's body out: walls, other connectors, other plugs. */
export function roomRefusals(build: Build, seated: SeatedPlug): readonly FitRefusal[] {
  const body = plugBox(seated.plug, seated.connector, seated.seat);
  const over = sidesHungOver(seated);
  return [
    ...wallRefusals(seated.connector, over),
    ...(over.length > 0 ? connectorRefusals(build.board, seated.connector, body) : []),
    ...plugRefusals(build, seated, body),
  ];
}

/** The sides of the connector past which the plug's body reaches. */
function sidesHungOver({ seat, plug, connector }: SeatedPlug): readonly Side[] {
  const [row, col] = cellUnder(seat, [0, 0]);
  const [lastRow, lastCol] = cellUnder(seat, [plug.grid.rows - 1, plug.grid.cols - 1]);
  const over: Side[] = [];
  if (Math.min(row, lastRow) < 0) over.push('top');
  if (Math.max(col, lastCol) >= connector.grid.cols) over.push('right');
  if (Math.max(row, lastRow) >= connector.grid.rows) over.push('bottom');
  if (Math.min(col, lastCol) < 0) over.push('left');
  return over;
}

function wallRefusals(connector: Connector, over: readonly Side[]): readonly FitRefusal[] {
  const walls = connector.shroud?.walls ?? [];
  return over
    .filter((side) => walls.includes(side))
    .map((side) => ({ code: 'wall', side, connector: connector.id }));
}

function connectorRefusals(board: BoardSheet, own: Connector, body: Box): readonly FitRefusal[] {
  return connectorsNear(board)(body)
    .filter((other) => other.id !== own.id && obstaclesOf(other).some((box) => boxesCollide(box, body)))
    .map((other) => ({ code: 'obstructed', by: other.id }));
}

const connectorsNear = byIdentity(
  (board: BoardSheet) => nearIndex(board.connectors, connectorBox),
  (board) => [board.connectors],
);

/** What of a connector stands up from the board: its housing, or its posts where it has none. */
const obstaclesOf = byIdentity((connector: Connector): readonly Box[] => {
  const open = connector.family === 'pin-header' && (connector.shroud?.walls.length ?? 0) === 0;
  return open ? postBoxes(connector) : [connectorBox(connector)];
});

/** Square posts a quarter of their pitch wide: 0.64 mm at 2.54 mm, 0.50 mm at 2.00 mm. */
function postBoxes(connector: Connector): readonly Box[] {
  const half = Math.min(connector.grid.pitchMm, rowPitchOf(connector.grid)) / 8;
  return gridIndex(connector.grid)
    .positions.filter(({ label }) => pinOf(connector, label).missing !== true)
    .map(({ cell }) => {
      const { xMm, yMm } = cellCentre(connector, cell);
      return { leftMm: xMm - half, topMm: yMm - half, rightMm: xMm + half, bottomMm: yMm + half };
    });
}

interface Body {
  readonly seated: SeatedPlug;
  readonly box: Box;
}

const bodiesNear = byIdentity((build: Build) => {
  const bodies = seatedPlugs(build).map(
    (seated): Body => ({ seated, box: plugBox(seated.plug, seated.connector, seated.seat) }),
  );
  return nearIndex(bodies, (body) => body.box);
}, wiringOf);

/** Other plugs in the way. The plug's own present seat is not. */
function plugRefusals(build: Build, { seat, connector }: SeatedPlug, body: Box): readonly FitRefusal[] {
  return bodiesNear(build)(body)
    .filter((other) => !samePlug(other.seated.seat, seat) && boxesCollide(other.box, body))
    .map((other) => ({
      code: 'occupied',
      by: { lead: other.seated.seat.lead, plug: other.seated.seat.plug },
      pins: pinsUnderBoth(connector, body, other.box),
    }));
}

function pinsUnderBoth(connector: Connector, a: Box, b: Box): readonly string[] {
  return gridIndex(connector.grid)
    .positions.filter(({ cell }) => {
      const centre = cellCentre(connector, cell);
      return boxHolds(a, centre) && boxHolds(b, centre);
    })
    .map(({ label }) => label);
}
