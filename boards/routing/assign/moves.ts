import type { Build, Seat } from '../../document/build';
import type { Plug } from '../../document/lead';
import { anyConnectorOf, leadOf, type PlugRef, samePlug, seatOf, unitOf } from '../../document/lookup';
import { layDown, overhangOf } from '../../fit/laid-plug';
import { placesOf } from '../../fit/places';
import { seatedPlug } from '../../fit/seated-plug';
import type { Assignments } from './assignments';
import { drivePlugs } from './build-drives';
import { isDrivePower } from './drive-feeds';
import { enters, plugFor } from './plug-for';

/** What cannot be plugged in: nothing leads there, the plug does not fit, or another stays in the way of it. */
export interface Missing {
  /** The drive or fan that it is about. */
  readonly of: string;
  readonly code: 'no-lead' | 'no-fit' | 'in-the-way';
}

/** Where a plug is to go. */
interface Wish extends Pick<Missing, 'of'> {
  readonly plug: PlugRef;
  readonly connector: string;
  /** Where this cannot be had, what is on the connector is still needed there. */
  readonly keeps?: true;
}

/** What has to be moved so that every drive and fan is where it goes best; the arguments of one command. */
export interface Moves {
  readonly seats: readonly Seat[];
  readonly off: readonly PlugRef[];
  readonly missing: readonly Missing[];
}

/** The moves from how things are plugged in to how they are assigned. None where all is as it should be. */
export function movesTo(build: Build, to: Assignments): Moves {
  const all = [...portWishes(to), ...fanWishes(build, to), ...branchWishes(build, to)];
  const missing = all.filter((each): each is Missing => 'code' in each);
  const wishes = all.filter(
    (each): each is Wish => 'plug' in each && seatOf(build, each.plug)?.connector !== each.connector,
  );
  const empty: Build = { ...build, seats: [] };
  // What cannot be had makes nobody else give way; what it leaves in place may keep others from moving in turn.
  const failed = new Set(wishes.filter(({ plug, connector }) => !wholeSeat(empty, plug, connector)));
  for (const { of } of failed) missing.push({ of, code: 'no-fit' });
  for (;;) {
    const { seats, off, stuck } = carriedOut(build, wishes, failed);
    if (stuck.length === 0) return { seats, off, missing };
    for (const wish of stuck) {
      failed.add(wish);
      missing.push({ of: wish.of, code: 'in-the-way' });
    }
  }
}

function carriedOut(build: Build, wishes: readonly Wish[], failed: ReadonlySet<Wish>) {
  const moving = wishes.filter((wish) => !failed.has(wish));
  const staying = wishes.filter((wish) => failed.has(wish));
  const taken = new Set(moving.map(({ connector }) => connector));
  // What sits in the way comes off: either it moves on, or it is not wanted there.
  const off = build.seats
    .filter((seat) => moving.some(({ plug }) => samePlug(plug, seat)) || taken.has(seat.connector))
    .filter((seat) => !staying.some(({ plug }) => samePlug(plug, seat)))
    .map(({ lead, plug }) => ({ lead, plug }));
  let bare: Build = {
    ...build,
    seats: build.seats.filter((seat) => !off.some((ref) => samePlug(ref, seat))),
  };
  const seats: Seat[] = [];
  const stuck: Wish[] = [];
  for (const wish of moving) {
    const from = seatOf(build, wish.plug)?.connector;
    const isKept = staying.some(({ keeps, connector }) => keeps === true && connector === from);
    const seat = isKept ? undefined : wholeSeat(bare, wish.plug, wish.connector);
    if (seat === undefined) {
      stuck.push(wish);
      continue;
    }
    seats.push(seat);
    bare = { ...bare, seats: [...bare.seats, seat] };
  }
  return { seats, off: off.filter((ref) => !seats.some((seat) => samePlug(seat, ref))), stuck };
}

/** The seat of a plug on a connector in which least hangs over, the least turned first. */
function wholeSeat(build: Build, plug: PlugRef, connector: string): Seat | undefined {
  return placesOf(build, plug)
    .filter((seat) => seat.connector === connector)
    .map((seat) => layDown(seatedPlug(build, seat)))
    .map((laid) => ({ seat: laid.seat, over: overhangOf(laid).length }))
    .toSorted((a, b) => a.over - b.over || a.seat.turn - b.seat.turn)[0]?.seat;
}

function portWishes({ ports, ofDrives }: Assignments): readonly (Wish | Missing)[] {
  return ports.drives.flatMap(({ drive, port }): readonly (Wish | Missing)[] => {
    if (port === undefined) return [];
    const lead = ofDrives.dataLeads.get(drive);
    if (lead === undefined) return [{ of: drive, code: 'no-lead' }];
    return [{ plug: { lead: lead.lead, plug: lead.plug }, connector: port, of: drive }];
  });
}

function fanWishes(build: Build, { fans, connectors }: Assignments): readonly (Wish | Missing)[] {
  return fans.fans.flatMap(({ fan, header }): readonly (Wish | Missing)[] => {
    if (header === undefined) return [];
    const connector = anyConnectorOf(build, connectors.get(fan) ?? '');
    const lead = leadOf(build, fan);
    if (connector === undefined || lead === undefined) return [{ of: fan, code: 'no-lead' }];
    const isThere = ({ id: plug }: Plug) => seatOf(build, { lead: fan, plug })?.connector === connector.id;
    const plug = lead.plugs.find(isThere) ?? plugFor(lead, connector);
    if (plug === undefined) return [{ of: fan, code: 'no-fit' }];
    return [{ plug: { lead: fan, plug: plug.id }, connector: connector.id, of: fan }];
  });
}

function branchWishes(build: Build, { branches, ofDrives }: Assignments): readonly (Wish | Missing)[] {
  const leaving = new Set(
    branches.drives.flatMap(({ drive, branch, moved }) => (moved && branch !== undefined ? drive : [])),
  );
  for (;;) {
    const wishes = plugsForDrives(build, branches.drives, ofDrives.feeds, leaving);
    // What finds no plug itself stays, and does not leave its own to another.
    const stuck = wishes.filter((each) => 'code' in each && leaving.has(each.of));
    if (stuck.length === 0) return wishes;
    for (const { of } of stuck) leaving.delete(of);
  }
}

/** A plug for each drive that needs another: a free one, or else that of a drive that leaves the same cable. */
function plugsForDrives(
  build: Build,
  drives: Assignments['branches']['drives'],
  feeds: Assignments['ofDrives']['feeds'],
  leaving: ReadonlySet<string>,
): readonly (Wish | Missing)[] {
  const used = new Set<string>();
  const socketOf = (drive: string) => unitOf(build, drive)?.connectors.find(isDrivePower);
  const left = new Set([...leaving].map((drive) => socketOf(drive)?.id));
  return drives.flatMap(({ drive, branch, moved }): readonly (Wish | Missing)[] => {
    const socket = socketOf(drive);
    const lead = branch === undefined ? undefined : leadOf(build, branch);
    if (socket === undefined || lead === undefined) return [];
    if (!moved && feeds.get(drive)?.lead === lead.id) return [];
    const fitting = drivePlugs(build, lead).filter((id) =>
      lead.plugs.some((plug) => plug.id === id && enters(plug, socket)),
    );
    const seatedAt = (plug: string) => seatOf(build, { lead: lead.id, plug })?.connector;
    const isLeft = (plug: string) => !used.has(`${lead.id} ${plug}`);
    const free =
      fitting.find((plug) => isLeft(plug) && seatedAt(plug) === undefined) ??
      fitting.find((plug) => isLeft(plug) && left.has(seatedAt(plug)));
    if (free === undefined) return [{ of: drive, code: 'no-lead' }];
    used.add(`${lead.id} ${free}`);
    return [{ plug: { lead: lead.id, plug: free }, connector: socket.id, of: drive, keeps: true }];
  });
}
