import { byIdentity } from '../base/by-identity';
import type { BoardSheet } from '../document/board-sheet';
import type { Build } from '../document/build';
import { type Connector, SIDES, type Side } from '../document/connector';
import { samePlug } from '../document/lookup';
import type { FitRefusal } from './fit';
import { type Box, boxesCollide, connectorBox, GIVE_MM, plugBox, reachPast, turnedSide } from './geometry';
import { nearIndex } from './near';
import { pinPoints } from './pin-points';
import { type SeatedPlug, seatedPlugs, wiringOf } from './seated-plug';

/** The family of posts without a housing of their own. */
const OPEN_POSTS = 'pin-header';

/** What keeps the plug's body out: walls, other connectors, other plugs. */
export function roomRefusals(build: Build, seated: SeatedPlug, body: Box): readonly FitRefusal[] {
  const over = sidesHungOver(seated.connector, body);
  return [
    ...wallRefusals(seated.connector, over),
    ...(over.length > 0 ? connectorRefusals(build.board, seated.connector, body) : []),
    ...plugRefusals(build, seated, body),
  ];
}

/** The sides of the connector past which the plug's body reaches. */
function sidesHungOver(connector: Connector, body: Box): readonly Side[] {
  const own = connectorBox(connector);
  return SIDES.filter((side) => reachPast(body, own, turnedSide(side, connector.place.turn)) > GIVE_MM);
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
function obstaclesOf(connector: Connector): readonly Box[] {
  const open = connector.family === OPEN_POSTS && (connector.shroud?.walls.length ?? 0) === 0;
  if (!open) return [connectorBox(connector)];
  return pinPoints(connector)
    .filter(({ stands }) => stands)
    .map(({ post }) => post);
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
  return pinPoints(connector)
    .filter(({ post }) => boxesCollide(post, a) && boxesCollide(post, b))
    .map(({ pin }) => pin);
}
