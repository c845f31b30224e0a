import { ok, type Result, refuse } from '../base/result';
import type { Build } from '../document/build';
import type { Connector } from '../document/connector';
import type { Lead, Plug } from '../document/lead';
import { connectorOf, leadOf, type PlugRef, unitOf, unitsOf, unitWith } from '../document/lookup';
import type { Unit } from '../document/unit';
import { withFollowingPoints } from './photo-points';
import type { Refusal } from './refusal';

function swap<T extends { readonly id: string }>(items: readonly T[], next: T): T[] {
  return items.map((item) => (item.id === next.id ? next : item));
}

/** A build with one lead changed, wherever it came from. Refuses a lead that is not there. */
export function changeLead(
  build: Build,
  id: string,
  change: (lead: Lead) => Result<Lead, Refusal>,
): Result<Build, Refusal> {
  const lead = leadOf(build, id);
  if (lead === undefined) return refuse({ code: 'unknown-lead', lead: id });
  const next = change(lead);
  if (!next.ok) return next;
  if (build.extras.includes(lead)) return ok({ ...build, extras: swap(build.extras, next.value) });
  return ok({ ...build, case: { ...build.case, leads: swap(build.case.leads, next.value) } });
}

/** A build with one plug's lead changed. Refuses a lead or a plug that is not there. */
export function changePlug(
  build: Build,
  ref: PlugRef,
  change: (lead: Lead, plug: Plug) => Result<Lead, Refusal>,
): Result<Build, Refusal> {
  return changeLead(build, ref.lead, (lead) => {
    const plug = lead.plugs.find(({ id }) => id === ref.plug);
    if (plug === undefined) return refuse({ code: 'unknown-plug', lead: ref.lead, plug: ref.plug });
    return change(lead, plug);
  });
}

/** A build with one unit changed. Refuses a unit that is not there. */
export function changeUnit(
  build: Build,
  id: string,
  change: (unit: Unit) => Result<Unit, Refusal>,
): Result<Build, Refusal> {
  const unit = unitOf(build, id);
  if (unit === undefined) return refuse({ code: 'unknown-unit', unit: id });
  const next = change(unit);
  return next.ok ? ok({ ...build, units: swap(unitsOf(build), next.value) }) : next;
}

/** A build with one connector of its board, or of a unit, changed. Refuses a connector that is not there. */
export function changeConnector(
  build: Build,
  id: string,
  change: (connector: Connector) => Result<Connector, Refusal>,
): Result<Build, Refusal> {
  const connector = connectorOf(build.board, id);
  if (connector === undefined) return changeUnitConnector(build, id, change);
  const next = change(connector);
  if (!next.ok) return next;
  const connectors = swap(build.board.connectors, next.value);
  // At once, and not only at the end of the command: what checks the build sees no point of a gone position.
  return ok(withFollowingPoints(build, { ...build, board: { ...build.board, connectors } }));
}

function changeUnitConnector(
  build: Build,
  id: string,
  change: (connector: Connector) => Result<Connector, Refusal>,
): Result<Build, Refusal> {
  const unit = unitWith(build, id);
  const connector = unit?.connectors.find((each) => each.id === id);
  if (unit === undefined || connector === undefined)
    return refuse({ code: 'unknown-connector', connector: id });
  const next = change(connector);
  if (!next.ok) return next;
  return changeUnit(build, unit.id, () => ok({ ...unit, connectors: swap(unit.connectors, next.value) }));
}
