import { byIdentity } from '../base/by-identity';
import type { BoardSheet } from '../document/board-sheet';
import type { Build, Seat } from '../document/build';
import type { Connector } from '../document/connector';
import type { Lead, Plug } from '../document/lead';
import { anyConnectorOf, leadOf, type PlugRef, unitsOf, unitWith } from '../document/lookup';
import type { Unit } from '../document/unit';

/** What connectors stand on: the board or a unit. Plugs on one are never in the way of those on another. */
export type Carrier = Pick<BoardSheet, 'connectors'>;

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
  const connector = anyConnectorOf(build, seat.connector);
  if (!connector) throw new Error(`No such connector in the build: ${seat.connector}`);
  return { seat, lead, plug, connector };
}

/** The board or the unit that a connector stands on. */
export function carrierOf(build: Build, connector: string): Carrier {
  return unitWith(build, connector) ?? build.board;
}

/** Every seated plug of a build, in the order of its seats. */
export const seatedPlugs = byIdentity(
  (build: Build): readonly SeatedPlug[] => build.seats.map((seat) => seatedPlug(build, seat)),
  wiringOf,
);

/** A plug in the hand, and what it could be for. */
export interface PlugOnBoard {
  readonly board: BoardSheet;
  readonly units: readonly Unit[];
  readonly lead: Lead;
  readonly plug: Plug;
}

/** What a plug's ids stand for. Throws on one that is not in the build. */
export function plugOnBoard(build: Build, ref: PlugRef): PlugOnBoard {
  const lead = leadOf(build, ref.lead);
  const plug = lead?.plugs.find((each) => each.id === ref.plug);
  if (!lead || !plug) throw new Error(`No such plug in the build: ${ref.lead} ${ref.plug}`);
  return { board: build.board, units: unitsOf(build), lead, plug };
}

/** The board and every unit, in the order in which places on them are told. */
export function carriersOf({ board, units }: Pick<PlugOnBoard, 'board' | 'units'>): readonly Carrier[] {
  return [board, ...units];
}

/** All that the places of a plug depend on while nothing else is plugged in. */
export function bareThings({ board, units, lead, plug }: PlugOnBoard): readonly object[] {
  return [board.connectors, units, lead, plug];
}
