import type { Build } from './build';
import { liesOver } from './footprint';
import { leadsOf } from './lookup';
import { nearestOf } from './nearest';
import { Once } from './once';
import type { ProblemList } from './problem-list';
import { shownText } from './shown-value';

/** Seats name a plug and a connector that are there, each plug once, and lie over its positions. */
export function checkSeats(build: Build, list: ProblemList): void {
  const leads = new Map(leadsOf(build).map((lead) => [lead.id, lead]));
  const connectors = new Map(build.board.connectors.map((connector) => [connector.id, connector]));
  const once = new Once('a plug', list);
  build.seats.forEach((seat, at) => {
    const here = `seats[${at}]`;
    const lead = leads.get(seat.lead);
    if (lead === undefined) return unknown(`${here}.lead`, 'a lead', seat.lead, leads);
    const plugs = new Map(lead.plugs.map((plug) => [plug.id, plug]));
    const plug = plugs.get(seat.plug);
    if (plug === undefined)
      return unknown(`${here}.plug`, `a plug of ${shownText(seat.lead)}`, seat.plug, plugs);
    once.enter(`${seat.lead} / ${seat.plug}`, `${here}.plug`);
    const connector = connectors.get(seat.connector);
    if (connector === undefined)
      return unknown(`${here}.connector`, 'a connector of the board', seat.connector, connectors);
    if (!liesOver(plug.grid, seat, connector.grid))
      list.add(() => ({
        path: `${here}.at`,
        expected: `a cell where the plug lies over pins of ${shownText(seat.connector)}`,
        found: `row ${seat.at[0]}, column ${seat.at[1]}`,
      }));
  });

  function unknown(path: string, what: string, id: string, known: ReadonlyMap<string, unknown>): void {
    list.add(() => {
      const nearest = nearestOf([...known.keys()], id);
      const meant = nearest === undefined ? '' : ` (perhaps ${shownText(nearest)} is meant)`;
      return { path, expected: `${what} that is there${meant}`, found: shownText(id) };
    });
  }
}
