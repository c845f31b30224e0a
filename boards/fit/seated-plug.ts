import { byIdentity } from '../base/by-identity';
import type { Build, Seat } from '../document/build';
import type { Connector } from '../document/connector';
import type { Lead, Plug } from '../document/lead';

/** A seat with what its ids stand for. */
export interface SeatedPlug {
  readonly seat: Seat;
  readonly lead: Lead;
  readonly plug: Plug;
  readonly connector: Connector;
}

const connectorsById = byIdentity(
  (connectors: Build['board']['connectors']) => new Map(connectors.map((each) => [each.id, each])),
);

const leadsById = byIdentity(
  (own: readonly Lead[], extras: readonly Lead[]) =>
    new Map([...extras, ...own].map((lead) => [lead.id, lead])),
);

/** What the ids of a seat stand for. Throws on an id that is not in the build: the parser lets none in. */
export function seatedPlug(build: Build, seat: Seat): SeatedPlug {
  const lead = leadsById(build.case.leads, build.extras).get(seat.lead);
  const plug = lead?.plugs.find((each) => each.id === seat.plug);
  const connector = connectorsById(build.board.connectors).get(seat.connector);
  if (!lead || !plug || !connector) throw new Error(`Nothing to seat: ${JSON.stringify(seat)}`);
  return { seat, lead, plug, connector };
}

/** Every seated plug of a build, in the order of its seats. */
export function seatedPlugs(build: Build): readonly SeatedPlug[] {
  return build.seats.map((seat) => seatedPlug(build, seat));
}
