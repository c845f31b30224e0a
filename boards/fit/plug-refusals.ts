import { byIdentity } from '../base/by-identity';
import type { Build } from '../document/build';
import type { Connector } from '../document/connector';
import { samePlug } from '../document/lookup';
import type { FitRefusal } from './fit';
import { type Box, boxesCollide } from './geometry';
import { type LaidPlug, layDown } from './laid-plug';
import { nearIndex } from './near';
import { pinPoints } from './pin-points';
import { seatedPlugs, wiringOf } from './seated-plug';

/** The plugs that are already in the way, on the same connector or beside it. Its own present seat is not. */
export function plugRefusals(build: Build, { seat, connector, body }: LaidPlug): readonly FitRefusal[] {
  return plugsNear(build)(body)
    .filter((other) => !samePlug(other.seat, seat) && boxesCollide(other.body, body))
    .map((other) => ({
      code: 'occupied',
      by: { lead: other.seat.lead, plug: other.seat.plug },
      pins: pinsUnderBoth(connector, body, other.body),
    }));
}

const plugsNear = byIdentity(
  (build: Build) => nearIndex(seatedPlugs(build).map(layDown), ({ body }) => body),
  wiringOf,
);

function pinsUnderBoth(connector: Connector, a: Box, b: Box): readonly string[] {
  return pinPoints(connector)
    .filter(({ post }) => boxesCollide(post, a) && boxesCollide(post, b))
    .map(({ pin }) => pin);
}
