import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import type { Lead } from '../../document/lead';
import { leadOf, seatOf, unitsOf, unitWith } from '../../document/lookup';
import type { Unit } from '../../document/unit';

/** How a drive gets its power. */
export interface DriveFeed {
  /** The cable of the supply. */
  readonly lead: string;
  /** The plug of that cable which the power leaves by. */
  readonly plug: string;
  /** What lies between, by the drive: an adapter. */
  readonly through?: Unit;
}

/** How each drive of a build gets its power from the supply, straight or behind adapters; only those that do. */
export function driveFeeds(build: Build): ReadonlyMap<string, DriveFeed> {
  return new Map(
    unitsOf(build).flatMap(({ id, kind, connectors }) => {
      const socket = kind === 'drive' ? connectors.find(isDrivePower) : undefined;
      const feed = socket && feedOf(build, socket.id, new Set());
      return feed ? [[id, feed]] : [];
    }),
  );
}

export function isDrivePower({ pins }: Connector): boolean {
  return pins.some(({ belongsTo }) => belongsTo === 'drive-power');
}

/** The outlet of a supply that a lead comes from. */
export function outletOf(build: Build, lead: Lead): Connector | undefined {
  for (const { id } of lead.plugs) {
    const seat = seatOf(build, { lead: lead.id, plug: id });
    const unit = seat && unitWith(build, seat.connector);
    if (unit?.kind === 'supply') return unit.connectors.find((each) => each.id === seat?.connector);
  }
  return undefined;
}

/** @param passed adapters on the way so far: a ring of them feeds nothing */
function feedOf(build: Build, socket: string, passed: Set<string>): DriveFeed | undefined {
  for (const { lead: id, plug } of build.seats.filter(({ connector }) => connector === socket)) {
    const lead = leadOf(build, id);
    if (lead === undefined || lead.setAside === true) continue;
    if (outletOf(build, lead) !== undefined) return { lead: id, plug };
    const through = behind(build, lead, passed);
    if (through !== undefined) return through;
  }
  return undefined;
}

/** The feed of the adapter that a lead comes out of. */
function behind(build: Build, lead: Lead, passed: Set<string>): DriveFeed | undefined {
  for (const { id: plug } of lead.plugs) {
    const inside = seatOf(build, { lead: lead.id, plug })?.connector;
    const unit = inside === undefined ? undefined : unitWith(build, inside);
    if (unit?.kind !== 'hub' || passed.has(unit.id)) continue;
    passed.add(unit.id);
    for (const { id } of unit.connectors) {
      const feed = id === inside ? undefined : feedOf(build, id, passed);
      if (feed !== undefined) return { ...feed, through: unit };
    }
  }
  return undefined;
}
