import type { Build } from '../build';
import { liesOver } from '../footprint';
import { connectorsOf, leadsOf } from '../lookup';
import { nearestOf } from '../problem/nearest';
import type { ProblemList } from '../problem/problem-list';
import { shownText } from '../problem/shown-value';
import { Once } from './once';

/** Seats name a plug and a connector that are there, each plug once, and lie over its positions. */
export function checkSeats(build: Build, list: ProblemList): void {
  const leads = new Map(leadsOf(build).map((lead) => [lead.id, lead]));
  const connectors = new Map(connectorsOf(build).map((connector) => [connector.id, connector]));
  const once = new Once('a plug', list);
  for (const [at, seat] of build.seats.entries()) {
    if (list.full) return;
    const here = `seats[${at}]`;
    const lead = leads.get(seat.lead);
    const plugs = new Map(lead?.plugs.map((plug) => [plug.id, plug]));
    const plug = plugs.get(seat.plug);
    const connector = connectors.get(seat.connector);
    if (lead === undefined) unknown(`${here}.lead`, 'a lead', seat.lead, leads);
    else if (plug === undefined) unknown(`${here}.plug`, `a plug of ${shownText(lead.id)}`, seat.plug, plugs);
    else once.enter(`${seat.lead} / ${seat.plug}`, `${here}.plug`);
    if (connector === undefined)
      unknown(`${here}.connector`, 'a connector of the board or of a unit', seat.connector, connectors);
    else if (plug !== undefined && !liesOver(plug.grid, seat, connector.grid))
      list.add(() => ({
        path: `${here}.at`,
        expected: `a cell where the plug lies over pins of ${shownText(connector.id)}`,
        found: `row ${seat.at[0]}, column ${seat.at[1]}`,
      }));
  }

  function unknown(path: string, what: string, id: string, known: ReadonlyMap<string, unknown>): void {
    list.add(() => {
      const nearest = nearestOf([...known.keys()], id);
      const meant = nearest === undefined ? '' : ` (perhaps ${shownText(nearest)} is meant)`;
      return { path, expected: `${what} that is there${meant}`, found: shownText(id) };
    });
  }
}
