import { byIdentity } from '../base/by-identity';
import { TURNS, type Turn } from '../base/units';
import type { Build, Seat } from '../document/build';
import type { Connector } from '../document/connector';
import type { Plug } from '../document/lead';
import type { PlugRef } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import { boardRefusals } from './board-refusals';
import { entryRefusals } from './entry';
import { firstCell } from './geometry';
import { type LaidPlug, layDown } from './laid-plug';
import { pinPoints } from './pin-points';
import { plugRefusals } from './plug-refusals';
import { bareThings, type Carrier, carriersOf, type PlugOnBoard, plugOnBoard } from './seated-plug';

/**
 * Every seat in which a plug fits, on the board and then on units: by connector, turn, row and column. Its own
 * present seat is among them.
 */
export function placesOf(build: Build, ref: PlugRef): readonly Seat[] {
  return placesOnBoard(plugOnBoard(build, ref))
    .filter((laid) => plugRefusals(build, laid).length === 0)
    .map(({ seat }) => seat);
}

/** Those that board and units alone leave: they stay the same whatever is plugged in and pulled off. */
const placesOnBoard = byIdentity(
  (of: PlugOnBoard): readonly LaidPlug[] =>
    carriersOf(of).flatMap((carrier) =>
      carrier.connectors.flatMap((connector) =>
        TURNS.flatMap((turn) => placesOn(of, carrier, connector, turn)),
      ),
    ),
  bareThings,
);

function placesOn(
  { lead, plug }: PlugOnBoard,
  carrier: Carrier,
  connector: Connector,
  turn: Turn,
): readonly LaidPlug[] {
  if (entryRefusals(plug, connector, turn).length > 0) return [];
  return candidates(plug, connector, turn)
    .map((at): Seat => ({ lead: lead.id, plug: plug.id, connector: connector.id, at, turn }))
    .map((seat) => layDown({ seat, lead, plug, connector }))
    .filter((laid) => boardRefusals(carrier, laid).length === 0);
}

/** Every place in which at least one hole lies over a standing pin, row by row. */
function candidates(plug: Plug, connector: Connector, turn: Turn): readonly Seat['at'][] {
  const found = new Map<string, Seat['at']>();
  for (const pin of pinPoints(connector)) {
    if (!pin.stands) continue;
    for (const hole of gridIndex(plug.grid).positions) {
      const at = firstCell(turn, hole.cell, pin.cell);
      found.set(at.join(), at);
    }
  }
  return [...found.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}
