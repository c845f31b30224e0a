import { byIdentity } from '../base/by-identity';
import { TURNS } from '../base/units';
import type { Build, Seat } from '../document/build';
import type { Connector } from '../document/connector';
import type { Cell } from '../document/grid';
import type { Lead, Part, Plug } from '../document/lead';
import type { PlugRef } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import type { Terminal } from '../signals/part-kind';
import { partKindOf } from '../signals/part-kinds';
import { boardRefusals } from './board-refusals';
import { cellUnder, firstCell } from './geometry';
import { jointsOfPlug } from './joints';
import { type LaidPlug, layDown, overhangOf } from './laid-plug';
import { standingPinAt } from './landing';
import { couldSuit, matchOf, type PartMatch } from './match';
import { plugRefusals } from './plug-refusals';
import { bareThings, carriersOf, type PlugOnBoard, plugOnBoard } from './seated-plug';
import { wireEndsAt } from './wire-ends';

/**
 * The places of a plug in which every contact that matters lies on a pin it is made for: nothing
 * hanging over first, then the pins most its own, the least turned, the first connector. None for a
 * plug without parts. A part with wires in several plugs is judged by those in this one.
 */
export function properSeats(build: Build, ref: PlugRef): readonly Seat[] {
  return properOnBoard(plugOnBoard(build, ref))
    .filter((laid) => plugRefusals(build, laid).length === 0)
    .map(({ seat }) => seat);
}

/** The same with nothing else plugged in, best first; the board's own before those of units. */
const properOnBoard = byIdentity((of: PlugOnBoard): readonly LaidPlug[] => {
  const { lead, plug } = of;
  const needs = needsOf(lead, plug);
  const all = carriersOf(of).flatMap((carrier) =>
    carrier.connectors.map((connector) => ({ carrier, connector })),
  );
  const found = all.flatMap(({ carrier, connector }, order) =>
    likelySeats(lead, plug, needs, connector).flatMap((seat) => {
      const laid = layDown({ seat, lead, plug, connector });
      const matches = matchOf(jointsOfPlug(laid));
      if (matches.some(({ verdict }) => verdict !== 'right')) return [];
      if (boardRefusals(carrier, laid).length > 0) return [];
      return [{ laid, rank: [overhangOf(laid).length, strangeness(matches), seat.turn, order, ...seat.at] }];
    }),
  );
  return found.sort((a, b) => compare(a.rank, b.rank)).map(({ laid }) => laid);
}, bareThings);

/** A contact with a part's wire in it. */
interface Need {
  readonly cell: Cell;
  readonly part: Part;
  readonly terminal: Terminal;
}

/** What the plug's contacts are made for, those that may be left off last. */
function needsOf(lead: Lead, plug: Plug): readonly Need[] {
  const needs = gridIndex(plug.grid).positions.flatMap(({ label, cell }) =>
    wireEndsAt(lead, plug, label).flatMap(({ part, terminal }) =>
      part && terminal ? [{ cell, part, terminal }] : [],
    ),
  );
  return needs.toSorted((a, b) => Number(a.terminal.spare ?? false) - Number(b.terminal.spare ?? false));
}

/** The seats on a connector that bring every contact to a pin it could be made for. */
function likelySeats(lead: Lead, plug: Plug, needs: readonly Need[], connector: Connector): readonly Seat[] {
  const [first, ...others] = needs;
  if (first === undefined) return [];
  return gridIndex(connector.grid)
    .positions.filter(({ cell }) => isLikely(first, connector, cell))
    .flatMap(({ cell }) => TURNS.map((turn) => ({ at: firstCell(turn, first.cell, cell), turn })))
    .filter((position) => others.every((need) => isLikely(need, connector, cellUnder(position, need.cell))))
    .map((position) => ({ lead: lead.id, plug: plug.id, connector: connector.id, ...position }));
}

function isLikely({ part, terminal }: Need, connector: Connector, cell: Cell): boolean {
  return couldSuit(partKindOf(part.kind), { terminal, pin: standingPinAt(connector, cell) });
}

/** How many contacts lie on a second choice, on another job's ground, or on another port than their part's. */
export function strangeness(matches: readonly PartMatch[]): number {
  const strange = matches.flatMap(({ part, kind, contacts }) =>
    contacts.filter(({ terminal, pin }) => {
      if (pin === undefined) return false;
      const secondChoice = pin.signal !== undefined && terminal.wants.indexOf(pin.signal) > 0;
      const otherJob = pin.belongsTo !== undefined && pin.belongsTo !== kind.job;
      const otherPort = (pin.channel ?? part.channel) !== (part.channel ?? pin.channel);
      return secondChoice || otherJob || otherPort;
    }),
  );
  return strange.length;
}

/** Compares two ranks number by number. */
function compare(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((each, index) => each !== b[index]);
  return at === -1 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}
