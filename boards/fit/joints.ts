import { byIdentity } from '../base/by-identity';
import type { Build, Seat } from '../document/build';
import type { Connector, Pin } from '../document/connector';
import type { Lead, Plug } from '../document/lead';
import type { Landing } from './fit';
import { landingsOf, meetsPin } from './landing';
import { type SeatedPlug, seatedPlugs, wiringOf } from './seated-plug';
import { type WireEnd, wireEndsAt } from './wire-ends';

/** One wire end at a contact of a seated plug, what it touches, and where the wire comes from. */
export interface Joint extends WireEnd {
  readonly seat: Seat;
  readonly lead: Lead;
  readonly plug: Plug;
  readonly hole: string;
  readonly landing: Landing;
  readonly connector: Connector;
  /** The pin that the contact touches; undefined over a gap and past the edge. */
  readonly pin?: Pin;
}

/** Every joint of a build: by seat, then by hole, then by wire. */
export const jointsOf = byIdentity(
  (build: Build): readonly Joint[] => seatedPlugs(build).flatMap(jointsKept),
  wiringOf,
);

/** The joints of a plug of a build: they change only with its seat, its lead or the connector, and most stay from one edit to the next. */
export const jointsKept = byIdentity(jointsOfPlug, ({ seat, lead, connector }) => [seat, lead, connector]);

/** The joints of one plug as it sits. */
export function jointsOfPlug(seated: SeatedPlug): readonly Joint[] {
  const { seat, lead, plug, connector } = seated;
  return landingsOf(seated).flatMap((landing) => {
    const { hole, state, pin } = landing;
    if (state !== 'contact') return [];
    const touched = pin && meetsPin(landing) ? { pin } : {};
    return wireEndsAt(lead, plug, hole).map(
      (end): Joint => ({ seat, lead, plug, connector, hole, landing, ...touched, ...end }),
    );
  });
}
