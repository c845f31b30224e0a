import { TURNS, type Turn } from '../base/units';
import type { Build, Seat } from '../document/build';
import type { Connector } from '../document/connector';
import type { Lead, Plug } from '../document/lead';
import { leadOf, type PlugRef, pinOf } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import { entryRefusals } from './entry';
import { fitPlug } from './fit-seat';
import { cellUnder } from './geometry';

/** Every seat in which a plug fits: by connector, turn, row and column. Its own present seat is among them. */
export function placesOf(build: Build, ref: PlugRef): readonly Seat[] {
  const lead = leadOf(build, ref.lead);
  const plug = lead?.plugs.find((each) => each.id === ref.plug);
  if (!lead || !plug) throw new Error(`No plug ${ref.lead} ${ref.plug}`);
  return build.board.connectors.flatMap((connector) =>
    TURNS.flatMap((turn) => placesOn(build, lead, plug, connector, turn)),
  );
}

function placesOn(build: Build, lead: Lead, plug: Plug, connector: Connector, turn: Turn): readonly Seat[] {
  if (entryRefusals(plug, connector, turn).length > 0) return [];
  return candidates(plug, connector, turn)
    .map((at): Seat => ({ lead: lead.id, plug: plug.id, connector: connector.id, at, turn }))
    .filter((seat) => fitPlug(build, { seat, lead, plug, connector }).refusals.length === 0);
}

/** Every place in which at least one hole lies over a standing pin, row by row. */
function candidates(plug: Plug, connector: Connector, turn: Turn): readonly Seat['at'][] {
  const found = new Map<string, Seat['at']>();
  for (const pin of gridIndex(connector.grid).positions) {
    if (pinOf(connector, pin.label).missing === true) continue;
    for (const hole of gridIndex(plug.grid).positions) {
      const [row, col] = cellUnder({ at: [0, 0], turn }, hole.cell);
      const at: Seat['at'] = [pin.cell[0] - row, pin.cell[1] - col];
      found.set(at.join(), at);
    }
  }
  return [...found.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}
