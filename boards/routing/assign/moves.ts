import type { Build, Seat } from '../../document/build';
import { leadOf, type PlugRef, samePlug, seatOf, unitOf } from '../../document/lookup';
import { layDown, overhangOf } from '../../fit/laid-plug';
import { placesOf } from '../../fit/places';
import { seatedPlug } from '../../fit/seated-plug';
import type { Assignments } from './assignments';
import { drivePlugs, isDrivePower } from './build-drives';

/** What cannot be plugged in: nothing leads there, or the plug does not fit. */
interface Missing {
  /** The drive or fan that it is about. */
  readonly of: string;
  readonly code: 'no-lead' | 'no-fit';
}

/** Where a plug is to go. */
interface Wish extends Pick<Missing, 'of'> {
  readonly plug: PlugRef;
  readonly connector: string;
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
  const moving = all.filter(
    (each): each is Wish => 'plug' in each && seatOf(build, each.plug)?.connector !== each.connector,
  );
  const taken = new Set(moving.map(({ connector }) => connector));
  // What sits in the way comes off: either it moves on, or it is not wanted there.
  const off = build.seats
    .filter((seat) => moving.some(({ plug }) => samePlug(plug, seat)) || taken.has(seat.connector))
    .map(({ lead, plug }) => ({ lead, plug }));
  let bare: Build = {
    ...build,
    seats: build.seats.filter((seat) => !off.some((ref) => samePlug(ref, seat))),
  };
  const seats: Seat[] = [];
  for (const { plug, connector, of } of moving) {
    const seat = wholeSeat(bare, plug, connector);
    if (seat === undefined) {
      missing.push({ of, code: 'no-fit' });
      continue;
    }
    seats.push(seat);
    bare = { ...bare, seats: [...bare.seats, seat] };
  }
  return { seats, off: off.filter((ref) => !seats.some((seat) => samePlug(seat, ref))), missing };
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
    const connector = connectors.get(fan);
    const plug = leadOf(build, fan)?.plugs[0];
    if (connector === undefined || plug === undefined) return [{ of: fan, code: 'no-lead' }];
    return [{ plug: { lead: fan, plug: plug.id }, connector, of: fan }];
  });
}

function branchWishes(build: Build, { branches }: Assignments): readonly (Wish | Missing)[] {
  const used = new Set<string>();
  return branches.drives.flatMap(({ drive, branch, moved }): readonly (Wish | Missing)[] => {
    const socket = unitOf(build, drive)?.connectors.find(isDrivePower);
    const lead = branch === undefined ? undefined : leadOf(build, branch);
    if (socket === undefined || lead === undefined) return [];
    const has = build.seats.some((seat) => seat.lead === lead.id && seat.connector === socket.id);
    if (has && !moved) return [];
    const free = drivePlugs(build, lead).find(
      (plug) => !used.has(`${lead.id} ${plug}`) && seatOf(build, { lead: lead.id, plug }) === undefined,
    );
    if (free === undefined) return [{ of: drive, code: 'no-lead' }];
    used.add(`${lead.id} ${free}`);
    return [{ plug: { lead: lead.id, plug: free }, connector: socket.id, of: drive }];
  });
}
