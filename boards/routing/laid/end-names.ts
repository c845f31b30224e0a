import type { Build } from '../../document/build';
import type { Run } from '../../document/cable';
import type { Lead } from '../../document/lead';
import { leadsOf, seatOf, unitsOf, unitWith } from '../../document/lookup';
import { connectorName, ownName } from '../../document/names';
import { placeName } from '../../document/place-names';
import { partKindOf } from '../../signals/part-kinds';
import { connectorAt, runId } from './laying-ids';

/** What a person calls a place of a laying: a connector of the board, the unit that sits there, or the place. */
export function spotName(build: Build, spot: string): string {
  const socket = connectorAt(spot);
  if (socket !== undefined) return connectorName(build, socket);
  const { tray } = build.case;
  const name = tray === undefined ? spot : placeName(tray, spot);
  const unit = unitsOf(build).find(({ at }) => at === spot);
  return unit === undefined ? name : unit.name;
}

/** What one end of a run is called: where its plug sits, or which plug it is while it sits nowhere. */
export function endName(build: Build, lead: Lead, plug: string | undefined): string {
  if (plug === undefined) return startName(build, lead);
  const seat = seatOf(build, { lead: lead.id, plug });
  if (seat === undefined) return plugLabel(lead, plug);
  const unit = unitWith(build, seat.connector);
  if (unit === undefined) return connectorName(build, seat.connector);
  if (unit.connectors.length === 1) return unit.name;
  return `${unit.name}, ${ownName(build, seat.connector)}`;
}

/** The near and the far end of a run. */
export function endNames(build: Build, lead: Lead, { from, to }: Run): readonly [near: string, far: string] {
  return [endName(build, lead, from), endName(build, lead, to)];
}

/** What a run is called: its lead, and the far end of it where the lead has several runs. */
export function runName(build: Build, lead: Lead, { to }: Run): string {
  const { runs = [] } = lead.cable ?? {};
  return runs.length < 2 ? lead.name : `${lead.name} to ${endName(build, lead, to)}`;
}

function startName(build: Build, { cable, parts }: Lead): string {
  if (cable?.start !== undefined) return spotName(build, cable.start);
  const [part] = parts;
  return part === undefined ? 'where it begins' : (part.name ?? partKindOf(part.kind).name);
}

/** A plug that sits nowhere: its print, or which one of the lead it is. */
export function plugLabel({ plugs }: Lead, id: string): string {
  const at = plugs.findIndex((plug) => plug.id === id);
  const plug = plugs[at];
  if (plug === undefined) return id;
  const alike = plugs.filter(({ print }) => print === plug.print).length > 1;
  return plug.print !== '' && !alike ? plug.print : `plug\u00a0${at + 1}`;
}

/** What the run of an id is called; the id itself where no lead has such a run. */
export function runNameOf(build: Build, id: string): string {
  for (const lead of leadsOf(build))
    for (const run of lead.cable?.runs ?? [])
      if (runId({ lead: lead.id, plug: run.to }) === id) return runName(build, lead, run);
  return id;
}
