import type { Amps } from '../../base/units';
import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import type { Lead } from '../../document/lead';
import { leadsOf, seatOf, unitsOf, unitWith } from '../../document/lookup';
import type { DriveRating } from '../../document/rating';
import type { PoweredDrive, SupplyBranch } from './branches';
import { type Assumed, choiceOf } from './build-fans';
import { type DriveFeed, driveFeeds, isDrivePower, outletOf } from './drive-feeds';
import { hasSignal } from './has-signal';
import type { DataDrive, DataPort } from './ports';

/** Of a drive whose label nobody has read: a turning one, which takes most (common practice, no source). */
export const USUAL_DRIVE = {
  lineRateGbps: 6,
  startAmps: 2,
} as const satisfies DriveRating;
/** Three contacts of a SATA power plug carry 12 V, 1.5 A each (from memory): no branch is known to carry less. */
export const USUAL_BRANCH_AMPS = 4.5;

/** The lead to a drive's data connector. */
interface DataLead {
  readonly lead: string;
  /** Its plug at the board's end. */
  readonly plug: string;
  readonly port?: string;
}

/** The drives of a build, with the ports and branches that they may go on. */
export interface BuildDrives {
  readonly data: readonly DataDrive[];
  readonly ports: readonly DataPort[];
  /** Places on the board with something in them. */
  readonly usedPlaces: readonly string[];
  readonly powered: readonly PoweredDrive[];
  readonly branches: readonly SupplyBranch[];
  /** By drive: how it gets its power now. */
  readonly feeds: ReadonlyMap<string, DriveFeed>;
  /** By drive. */
  readonly dataLeads: ReadonlyMap<string, DataLead>;
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
  const drives = unitsOf(build).filter(
    ({ kind, at }) => kind === 'drive' && (at === undefined || !places.has(at)),
  );
  for (const { id, drive } of drives) if (drive === undefined) assumed.push({ code: 'drive', unit: id });
  const feeds = driveFeeds(build);
  const dataLeads = new Map(
    drives.flatMap((unit) => {
      const socket = unit.connectors.find(isDataPort);
      const found = socket && dataLeadOf(build, leads, socket.id, ports);
      return found ? [[unit.id, found]] : [];
    }),
  );
  const data = drives
    .filter(({ connectors }) => connectors.some(isDataPort))
    .map((unit): DataDrive => {
      const { lineRateGbps = USUAL_DRIVE.lineRateGbps, fastestMBps } = unit.drive ?? {};
      const on = dataLeads.get(unit.id)?.port;
      const pinned = choiceOf(build, 'port', unit.id);
      return {
        ...{ id: unit.id, lineRateGbps },
        ...(fastestMBps !== undefined && { fastestMBps }),
        ...(on !== undefined && { on }),
        ...(pinned !== undefined && { pinned }),
      };
    });
  const powered = drives
    .filter(({ connectors }) => connectors.some(isDrivePower))
    .map((unit): PoweredDrive => {
      const feed = feeds.get(unit.id);
      const pinned = choiceOf(build, 'branch', unit.id);
      return {
        ...{ id: unit.id, startA: unit.drive?.startAmps ?? USUAL_DRIVE.startAmps },
        ...(feed && { on: feed.lead, byAdapter: feed.through !== undefined }),
        ...(pinned !== undefined && { pinned }),
      };
    });
  const branches = branchesOf(build, leads, feeds, hubAmps, assumed);
  return { data, ports, usedPlaces, powered, branches, feeds, dataLeads, assumed };
}

/** Cables of a supply that feed drives, or may. */
function branchesOf(
  build: Build,
  leads: readonly Lead[],
  feeds: ReadonlyMap<string, DriveFeed>,
  hubAmps: ReadonlyMap<string, Amps>,
  assumed: Assumed[],
): readonly SupplyBranch[] {
  return leads.flatMap((lead): readonly SupplyBranch[] => {
    const outlet = outletOf(build, lead);
    if (outlet === undefined) return [];
    const behind = behindAdapters(build, lead, feeds);
    const straight = drivePlugs(build, lead).filter((plug) => !behind.includes(plug));
    if (straight.length + behind.length === 0) return [];
    const rated = outlet.rating?.amps;
    if (rated === undefined) assumed.push({ code: 'branch-amps', lead: lead.id });
    const other = besideDrives(build, lead, { straight, behind }, hubAmps);
    return [
      {
        ...{ id: lead.id, connectors: straight.length },
        ...(behind.length > 0 && { adapters: behind.length }),
        ratedA: rated ?? USUAL_BRANCH_AMPS,
        ...(other && { other }),
      },
    ];
  });
}

function isDataPort(connector: Connector): boolean {
  return hasSignal(connector, 'sata-a-plus');
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

/** The plug of a lead that each drive behind an adapter gets its power by, and is to get it by. */
function behindAdapters(build: Build, lead: Lead, feeds: ReadonlyMap<string, DriveFeed>): readonly string[] {
  return [...feeds].flatMap(([drive, feed]) => {
    const chosen = choiceOf(build, 'branch', drive) ?? lead.id;
    return feed.lead === lead.id && feed.through !== undefined && chosen === lead.id ? [feed.plug] : [];
  });
}

/**
 * What a branch feeds that is no drive; only of hubs for fans it is known what that takes.
 *
 * @param forDrives its plugs for drives, and those that feed drives by adapters
 */
function besideDrives(
  build: Build,
  lead: Lead,
  forDrives: { readonly straight: readonly string[]; readonly behind: readonly string[] },
  hubAmps: ReadonlyMap<string, Amps>,
): SupplyBranch['other'] {
  let plugs = 0;
  let startA = 0;
  for (const { id: plug } of lead.plugs) {
    if (forDrives.behind.includes(plug)) continue;
    const seat = seatOf(build, { lead: lead.id, plug });
    const unit = seat && unitWith(build, seat.connector);
    if (seat === undefined || unit?.kind === 'supply' || unit?.kind === 'drive') continue;
    if (forDrives.straight.includes(plug)) plugs += 1;
    startA += hubAmps.get(unit?.id ?? '') ?? 0;
  }
  return plugs === 0 && startA === 0 ? undefined : { plugs, startA };
}

/** The lead on a drive's data connector, with its plug at the board's end. */
function dataLeadOf(
  build: Build,
  leads: readonly Lead[],
  socket: string,
  ports: readonly DataPort[],
): DataLead | undefined {
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
