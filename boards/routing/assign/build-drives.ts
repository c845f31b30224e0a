import type { Amps } from '../../base/units';
import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import type { Lead } from '../../document/lead';
import { leadsOf, seatOf, unitsOf, unitWith } from '../../document/lookup';
import type { DriveRating } from '../../document/rating';
import { type Assumed, choiceOf } from './build-fans';
import type { DataDrive, DataPort, PoweredDrive, SupplyBranch } from './drives';
import { hasSignal } from './has-signal';

/** Of a drive whose label nobody has read: a turning one, which takes most (common practice, no source). */
export const USUAL_DRIVE = {
  lineRateGbps: 6,
  startAmps: 2,
} as const satisfies DriveRating;
/** Three contacts of a SATA power plug carry 12 V, 1.5 A each (from memory): no branch is known to carry less. */
export const USUAL_BRANCH_AMPS = 4.5;

/** The drives of a build, with the ports and branches that they may go on. */
export interface BuildDrives {
  readonly data: readonly DataDrive[];
  readonly ports: readonly DataPort[];
  /** Places on the board with something in them. */
  readonly usedPlaces: readonly string[];
  readonly powered: readonly PoweredDrive[];
  readonly branches: readonly SupplyBranch[];
  /** By drive: the lead to its data connector, and the port it comes from now. */
  readonly dataLeads: ReadonlyMap<
    string,
    { readonly lead: string; readonly plug: string; readonly port?: string }
  >;
  readonly assumed: readonly Assumed[];
}

/**
 * What a build says of its drives; what it does not say is taken as usual, and named.
 *
 * @param hubAmps what a hub that the supply feeds takes at the start, by its id
 */
export function drivesOf(build: Build, hubAmps: ReadonlyMap<string, Amps>): BuildDrives {
  const assumed: Assumed[] = [];
  const places = new Set(build.board.drivePlaces?.map(({ id }) => id));
  const usedPlaces = unitsOf(build).flatMap(({ at }) => (at !== undefined && places.has(at) ? [at] : []));
  const ports = build.board.connectors.filter(isDataPort).map(({ id, rating }): DataPort => {
    if (rating?.lineRateGbps === undefined) assumed.push({ code: 'line-rate', connector: id });
    return {
      id,
      lineRateGbps: rating?.lineRateGbps ?? USUAL_DRIVE.lineRateGbps,
      ...(rating?.offWith && { offWith: rating.offWith }),
    };
  });
  const leads = leadsOf(build).filter(({ setAside }) => setAside !== true);
  const branchLeads = leads.filter(
    (lead) => outletOf(build, lead) !== undefined && drivePlugs(build, lead).length > 0,
  );
  const dataLeads = new Map<string, { lead: string; plug: string; port?: string }>();
  const data: DataDrive[] = [];
  const powered: PoweredDrive[] = [];
  for (const unit of unitsOf(build)) {
    if (unit.kind !== 'drive' || (unit.at !== undefined && places.has(unit.at))) continue;
    if (unit.drive === undefined) assumed.push({ code: 'drive', unit: unit.id });
    const { lineRateGbps = USUAL_DRIVE.lineRateGbps, fastestMBps, startAmps } = unit.drive ?? {};
    const socket = unit.connectors.find(isDataPort);
    if (socket !== undefined) {
      const found = dataLeadOf(build, leads, socket.id, ports);
      if (found !== undefined) dataLeads.set(unit.id, found);
      const pinned = choiceOf(build, 'port', unit.id);
      data.push({
        id: unit.id,
        lineRateGbps,
        ...(fastestMBps !== undefined && { fastestMBps }),
        ...(found?.port !== undefined && { on: found.port }),
        ...(pinned !== undefined && { pinned }),
      });
    }
    const power = unit.connectors.find(isDrivePower);
    if (power !== undefined) {
      const on = branchLeads.find(({ id }) =>
        build.seats.some((seat) => seat.lead === id && seat.connector === power.id),
      )?.id;
      const pinned = choiceOf(build, 'branch', unit.id);
      powered.push({
        id: unit.id,
        startA: startAmps ?? USUAL_DRIVE.startAmps,
        ...(on !== undefined && { on }),
        ...(pinned !== undefined && { pinned }),
      });
    }
  }
  const branches = branchLeads.map((lead): SupplyBranch => {
    const rated = outletOf(build, lead)?.rating?.amps;
    if (rated === undefined) assumed.push({ code: 'branch-amps', lead: lead.id });
    const other = besideDrives(build, lead, hubAmps);
    return {
      id: lead.id,
      connectors: drivePlugs(build, lead).length,
      ratedA: rated ?? USUAL_BRANCH_AMPS,
      ...(other && { other }),
    };
  });
  return { data, ports, usedPlaces, powered, branches, dataLeads, assumed };
}

function isDataPort(connector: Connector): boolean {
  return hasSignal(connector, 'sata-a-plus');
}

export function isDrivePower({ pins }: Connector): boolean {
  return pins.some(({ belongsTo }) => belongsTo === 'drive-power');
}

/** The outlet of a supply that a lead comes from. */
function outletOf(build: Build, lead: Lead): Connector | undefined {
  for (const { id } of lead.plugs) {
    const seat = seatOf(build, { lead: lead.id, plug: id });
    const unit = seat && unitWith(build, seat.connector);
    if (unit?.kind === 'supply') return unit.connectors.find((each) => each.id === seat?.connector);
  }
  return undefined;
}

/** The plugs of a lead that enter what some drive takes its power by. */
export function drivePlugs(build: Build, lead: Lead): readonly string[] {
  const families = new Set(
    unitsOf(build).flatMap(({ kind, connectors }) =>
      kind === 'drive' ? connectors.filter(isDrivePower).map(({ family }) => family) : [],
    ),
  );
  return lead.plugs.filter(({ family }) => families.has(family)).map(({ id }) => id);
}

/** What a branch feeds that is no drive; only of hubs for fans it is known what that takes. */
function besideDrives(build: Build, lead: Lead, hubAmps: ReadonlyMap<string, Amps>): SupplyBranch['other'] {
  const forDrives = drivePlugs(build, lead);
  let plugs = 0;
  let startA = 0;
  for (const { id: plug } of lead.plugs) {
    const seat = seatOf(build, { lead: lead.id, plug });
    const unit = seat && unitWith(build, seat.connector);
    if (seat === undefined || unit?.kind === 'supply' || unit?.kind === 'drive') continue;
    if (forDrives.includes(plug)) plugs += 1;
    startA += hubAmps.get(unit?.id ?? '') ?? 0;
  }
  return plugs === 0 && startA === 0 ? undefined : { plugs, startA };
}

/** The lead on a drive's data connector, with its plug at the board's end. */
function dataLeadOf(build: Build, leads: readonly Lead[], socket: string, ports: readonly DataPort[]) {
  for (const lead of leads) {
    const atDrive = build.seats.find((seat) => seat.lead === lead.id && seat.connector === socket);
    if (atDrive === undefined) continue;
    const far = lead.plugs.find(({ id }) => id !== atDrive.plug);
    if (far === undefined) continue;
    const port = seatOf(build, { lead: lead.id, plug: far.id })?.connector;
    const isPort = ports.some(({ id }) => id === port);
    return { lead: lead.id, plug: far.id, ...(isPort && port !== undefined && { port }) };
  }
  return undefined;
}
