import { byIdentity } from '../base/by-identity';
import type { Build } from '../document/build';
import type { Connector } from '../document/connector';
import { samePlug } from '../document/lookup';
import type { FitRefusal } from './fit';
import { type Box, boxesCollide } from './geometry';
import { type LaidPlug, layDown } from './laid-plug';
import { nearIndex } from './near';
import { pinPoints } from './pin-points';
import { type Carrier, carrierOf, seatedPlugs, wiringOf } from './seated-plug';

/** The plugs that are already in the way, on the same connector or beside it. Its own present seat is not. */
export function plugRefusals(build: Build, { seat, connector, body }: LaidPlug): readonly FitRefusal[] {
  return (plugsNear(build).get(carrierOf(build, connector.id).connectors) ?? nothingNear)(body)
    .filter((other) => !samePlug(other.seat, seat) && boxesCollide(other.body, body))
    .map((other) => ({
      code: 'occupied',
      by: { lead: other.seat.lead, plug: other.seat.plug },
      pins: pinsUnderBoth(connector, body, other.body),
    }));
}

const nothingNear = (): readonly LaidPlug[] => [];

/** What is plugged into the board, and into each unit: every one of them has millimetres of its own. */
const plugsNear = byIdentity((build: Build) => {
  // By its connectors: the rest of a board may change while the wiring stays.
  const onEach = new Map<Carrier['connectors'], LaidPlug[]>();
  for (const seated of seatedPlugs(build)) {
    const { connectors } = carrierOf(build, seated.connector.id);
    const known = onEach.get(connectors);
    if (known) known.push(layDown(seated));
    else onEach.set(connectors, [layDown(seated)]);
  }
  return new Map([...onEach].map(([connectors, laid]) => [connectors, nearIndex(laid, ({ body }) => body)]));
}, wiringOf);

function pinsUnderBoth(connector: Connector, a: Box, b: Box): readonly string[] {
  return pinPoints(connector)
    .filter(({ post }) => boxesCollide(post, a) && boxesCollide(post, b))
    .map(({ pin }) => pin);
}
