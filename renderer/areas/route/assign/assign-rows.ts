import type { Build } from '../../../../boards/document/build';
import { leadOf, unitsOf } from '../../../../boards/document/lookup';
import { connectorName, leadName, ownName, unitName } from '../../../../boards/document/names';
import type { PlaceChoice } from '../../../../boards/document/rating';
import { type Assignments, assignmentsOf } from '../../../../boards/routing/assign/assignments';
import { hasOwnPlugs, plugsOf } from '../../../../boards/routing/assign/branches';
import { USUAL_BRANCH_AMPS, USUAL_DRIVE } from '../../../../boards/routing/assign/build-drives';
import { type Assumed, USUAL_FAN, USUAL_HEADER_AMPS } from '../../../../boards/routing/assign/build-fans';
import type { FanLoad } from '../../../../boards/routing/assign/fan-loads';
import type { FanOnHeader } from '../../../../boards/routing/assign/fans';
import { type HungHub, USUAL_HUB_AMPS } from '../../../../boards/routing/assign/hubs';
import { branchWords, fanPlaceWords, loadWords, portWords } from '../../../../boards/routing/assign/words';

/** One drive or fan: where it goes, and why. */
export interface AssignRow {
  readonly kind: PlaceChoice['kind'];
  readonly id: string;
  readonly name: string;
  /** Where it is plugged in now; nothing where it is not. */
  readonly now?: string;
  readonly words: string;
  /** It has no place, or one that is worth a second look. */
  readonly wanting: boolean;
  readonly chosen?: string;
  readonly options: readonly { readonly id: string; readonly label: string }[];
}

interface AssignGroup {
  readonly kind: PlaceChoice['kind'];
  readonly title: string;
  readonly rows: readonly AssignRow[];
  /** What the headers carry as the fans are plugged in now. */
  readonly loads: readonly string[];
}

/** Every drive and fan of a build by what it goes on; only what there is. */
export function assignGroups(build: Build): readonly AssignGroup[] {
  const found = assignmentsOf(build);
  const groups: readonly AssignGroup[] = [
    { kind: 'header', title: 'Fans on headers', rows: fanRows(build, found), loads: loadsOf(build, found) },
    { kind: 'port', title: 'Drives on data ports', rows: portRows(build, found), loads: [] },
    { kind: 'branch', title: 'Drives on supply cables', rows: branchRows(build, found), loads: [] },
  ];
  return groups.filter(({ rows }) => rows.length > 0);
}

function chosenFor(build: Build, kind: PlaceChoice['kind'], of: string): { readonly chosen?: string } {
  const chosen = build.choices?.find((choice) => choice.kind === kind && choice.of === of)?.on;
  return chosen === undefined ? {} : { chosen };
}

function fanRows(build: Build, found: Assignments): readonly AssignRow[] {
  const { fans, ofFans } = found;
  const options = ofFans.headers.map(({ id }) => ({ id, label: headerName(build, ofFans, id) }));
  return fans.fans.map((each): AssignRow => {
    const now = ofFans.now.get(each.fan);
    const name = leadName(build, each.fan);
    const pinned = ofFans.fans.find(({ id }) => id === each.fan)?.pinned;
    return {
      kind: 'header',
      id: each.fan,
      name,
      ...(now && { now: connectorName(build, now.connector) }),
      words: fanPlaceWords(named(build, found, each)),
      wanting: isWanting(build, each),
      ...(pinned !== undefined && { chosen: pinned }),
      options,
    };
  });
}

/** A fan that no header is made for may be where it belongs. */
function isWanting({ seats }: Build, { fan, reason }: FanOnHeader): boolean {
  if (reason.code === 'fits-none') return seats.every(({ lead }) => lead !== fan);
  return reason.code !== 'placed' || reason.astray;
}

/** By the names that stand on the machine; an outlet is told by its own hub, of several on one header. */
function named(build: Build, { ofFans, connectors }: Assignments, { fan, header, reason }: FanOnHeader) {
  const at = connectors.get(fan);
  const hub = ofFans.hung.find(({ outlets }) => at !== undefined && outlets.includes(at));
  const place = hub ? hubName(build, ofFans, hub) : header && connectorName(build, header);
  return {
    fan: leadName(build, fan),
    ...(place !== undefined && { header: place }),
    ...(hub && at !== undefined && { outlet: ownName(build, at) }),
    reason,
  };
}

/** A header, with the hub that is on it. */
function headerName(build: Build, ofFans: Assignments['ofFans'], header: string): string {
  const hub = ofFans.hubs.get(header)?.units[0];
  return hub === undefined ? connectorName(build, header) : hubName(build, ofFans, hub);
}

/** A hub with the header that it is on; by its own name where it is on none, or on another hub. */
function hubName(build: Build, { headers, hung }: Assignments['ofFans'], { unit, on }: HungHub): string {
  const isOnHub = hung.some(({ outlets }) => on !== undefined && outlets.includes(on));
  const header = isOnHub ? undefined : headers.find(({ id }) => id === on);
  return header === undefined ? unit.name : `${unit.name} on ${connectorName(build, header.id)}`;
}

function loadsOf(build: Build, { loadsNow, ofFans }: Assignments): readonly string[] {
  const nameOf = ({ header, hub, from }: FanLoad): string => {
    if (from === 'supply') return headerName(build, ofFans, header);
    const name = connectorName(build, header);
    return hub === undefined ? name : `${hub.unit.name} on ${name}`;
  };
  return loadsNow.map((load) => loadWords({ ...load, header: nameOf(load) }));
}

function portRows(build: Build, { ports, ofDrives }: Assignments): readonly AssignRow[] {
  const options = ofDrives.ports.map(({ id }) => ({ id, label: connectorName(build, id) }));
  return ports.drives.map((each): AssignRow => {
    const now = ofDrives.dataLeads.get(each.drive)?.port;
    const { reason } = each;
    const name = unitName(build, each.drive);
    return {
      kind: 'port',
      id: each.drive,
      name,
      ...(now !== undefined && { now: connectorName(build, now) }),
      words: portWords({
        ...each,
        drive: name,
        ...(each.port !== undefined && { port: connectorName(build, each.port) }),
        reason: {
          ...reason,
          ...('port' in reason && { port: connectorName(build, reason.port) }),
          ...('m2' in reason && { m2: placeName(build, reason.m2) }),
        },
      }),
      wanting: reason.code !== 'full-speed',
      ...chosenFor(build, 'port', each.drive),
      options,
    };
  });
}

function branchRows(build: Build, { branches, ofDrives }: Assignments): readonly AssignRow[] {
  const options = ofDrives.branches.filter(hasOwnPlugs).map(({ id }) => ({ id, label: leadName(build, id) }));
  return branches.drives.map((each): AssignRow => {
    const now = ofDrives.powered.find(({ id }) => id === each.drive)?.on;
    const load = branches.branches.find(({ branch }) => branch === each.branch);
    const rated = ofDrives.branches.find(({ id }) => id === each.branch);
    const through = ofDrives.feeds.get(each.drive)?.through;
    const name = unitName(build, each.drive);
    return {
      kind: 'branch',
      id: each.drive,
      name,
      ...(now !== undefined && { now: leadName(build, now) }),
      words: branchWords({
        drive: name,
        ...(each.branch !== undefined && { branch: leadName(build, each.branch) }),
        moved: each.moved,
        loose: now === undefined,
        ...(through && { through: unitName(build, through.id) }),
        ...(each.reason && { reason: each.reason }),
        ...(load &&
          rated && {
            load: {
              ...{ loadA: load.loadA, ratedA: rated.ratedA, used: load.used, plugs: plugsOf(rated) },
              isMixed: rated.other !== undefined,
            },
          }),
      }),
      wanting: each.branch === undefined,
      ...chosenFor(build, 'branch', each.drive),
      options,
    };
  });
}

function placeName({ board }: Build, id: string): string {
  return board.drivePlaces?.find((place) => place.id === id)?.name ?? id;
}

/** What was taken as usual because the sheet is silent. */
export function assumedWords(build: Build, each: Assumed): string {
  switch (each.code) {
    case 'fan':
      return `${leadName(build, each.lead)}: ${USUAL_FAN.runningAmps}\u00a0A, ${USUAL_FAN.startAmps}\u00a0A at the start.`;
    case 'hub':
      return `${unitName(build, each.unit)}: a hub for ${USUAL_HUB_AMPS}\u00a0A, fed as its connectors say.`;
    case 'header-amps':
      return `${connectorName(build, each.connector)}: ${USUAL_HEADER_AMPS}\u00a0A.`;
    case 'watched':
      return `${connectorName(build, each.connector)}: watched for the processor’s fan, by its print.`;
    case 'line-rate':
      return `${connectorName(build, each.connector)}: a port of ${USUAL_DRIVE.lineRateGbps}\u00a0Gb/s.`;
    case 'drive':
      return `${unitName(build, each.unit)}: a drive of ${USUAL_DRIVE.lineRateGbps}\u00a0Gb/s that takes ${USUAL_DRIVE.startAmps}\u00a0A at the start.`;
    case 'branch-amps':
      return `${leadName(build, each.lead)}: ${USUAL_BRANCH_AMPS}\u00a0A at 12\u00a0V.`;
  }
}

/** What a remark about something that cannot be moved is about. */
export function ofName(build: Build, of: string): string {
  return leadOf(build, of) === undefined && unitsOf(build).some(({ id }) => id === of)
    ? unitName(build, of)
    : leadName(build, of);
}
