import { byIdentity } from '../base/by-identity';
import { type Connector, SIDES, type Side } from '../document/connector';
import type { FitRefusal } from './fit';
import { type Box, boxesCollide, connectorBox, GIVE_MM, reachPast, turnedSide } from './geometry';
import type { LaidPlug } from './laid-plug';
import { nearIndex } from './near';
import { pinPoints } from './pin-points';
import type { Carrier } from './seated-plug';

/** The family of posts without a housing of their own. */
const OPEN_POSTS = 'pin-header';

/** What of the board or the unit keeps a plug's body out where it hangs over: walls and other connectors. */
export function roomRefusals(carrier: Carrier, { connector, body }: LaidPlug): readonly FitRefusal[] {
  const over = sidesHungOver(connector, body);
  if (over.length === 0) return [];
  return [...wallRefusals(connector, over), ...connectorRefusals(carrier, connector, body)];
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

function connectorRefusals(carrier: Carrier, own: Connector, body: Box): readonly FitRefusal[] {
  return connectorsNear(carrier)(body)
    .filter((other) => other.id !== own.id && obstaclesOf(other).some((box) => boxesCollide(box, body)))
    .map((other) => ({ code: 'obstructed', by: other.id }));
}

const connectorsNear = byIdentity(
  ({ connectors }: Carrier) => nearIndex(connectors, connectorBox),
  ({ connectors }) => [connectors],
);

/** What of a connector stands up from the board: its housing, or its posts where it has none. */
function obstaclesOf(connector: Connector): readonly Box[] {
  const open = connector.family === OPEN_POSTS && (connector.shroud?.walls.length ?? 0) === 0;
  if (!open) return [connectorBox(connector)];
  return pinPoints(connector)
    .filter(({ stands }) => stands)
    .map(({ post }) => post);
}
