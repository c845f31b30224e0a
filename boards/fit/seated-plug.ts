import { byIdentity } from '../base/by-identity';
import type { BoardSheet } from '../document/board-sheet';
import type { Build, Seat } from '../document/build';
import type { Connector } from '../document/connector';
import type { Lead, Plug } from '../document/lead';
import { connectorsOf, leadsOf, type PlugRef, unitsOf } from '../document/lookup';

/** A seat with what its ids stand for. */
export interface SeatedPlug {
  readonly seat: Seat;
  readonly lead: Lead;
  readonly plug: Plug;
  readonly connector: Connector;
}

/** All of a build that decides what touches what. Names, notes and the view are not among it. */
export function wiringOf(build: Build): readonly object[] {
  return [build.board.connectors, unitsOf(build), build.case.leads, build.extras, build.seats];
}

/** What the ids of a seat stand for. Throws on an id that is not in the build: the parser lets none in. */
export function seatedPlug(build: Build, seat: Seat): SeatedPlug {
  const { lead, plug } = plugOnBoard(build, seat);
  const connector = connectorsById(build).get(seat.connector);
  if (!connector) throw new Error(`No such connector in the build: ${seat.connector}`);
  return { seat, lead, plug, connector };
}

/** Every seated plug of a build, in the order of its seats. */
export const seatedPlugs = byIdentity(
  (build: Build): readonly SeatedPlug[] => build.seats.map((seat) => seatedPlug(build, seat)),
  wiringOf,
);

/** A plug in the hand, and the board it is for. */
export interface PlugOnBoard {
  readonly board: BoardSheet;
  readonly lead: Lead;
  readonly plug: Plug;
}

/** What a plug's ids stand for. Throws on one that is not in the build. */
export function plugOnBoard(build: Build, ref: PlugRef): PlugOnBoard {
  const lead = leadsById(build).get(ref.lead);
  const plug = lead?.plugs.find((each) => each.id === ref.plug);
  if (!lead || !plug) throw new Error(`No such plug in the build: ${ref.lead} ${ref.plug}`);
  return { board: build.board, lead, plug };
}

const leadsById = byIdentity(
  (build: Build) => new Map(leadsOf(build).map((lead) => [lead.id, lead])),
  (build) => [build.case.leads, build.extras],
);

const connectorsById = byIdentity(
  (build: Build) => new Map(connectorsOf(build).map((connector) => [connector.id, connector])),
  (build) => [build.board.connectors, unitsOf(build)],
);
