import type { Build, Seat } from '../../document/build';
import { leadOf, type PlugRef, samePlug, seatOf, unitsOf } from '../../document/lookup';
import { layDown, overhangOf } from '../../fit/laid-plug';
import { placesOf } from '../../fit/places';
import { seatedPlug } from '../../fit/seated-plug';
import type { Assignments } from './assignments';
import { drivePlugs, isDrivePower } from './build-drives';

/** Where a plug is to go. */
interface Wish {
  readonly plug: PlugRef;
  readonly connector: string;
  /** The drive or fan that it is about. */
  readonly of: string;
}

/** What has to be moved so that every drive and fan is where it goes best; the arguments of one command. */
export interface Moves {
  readonly seats: readonly Seat[];
  readonly off: readonly PlugRef[];
  /** What cannot be plugged in: nothing leads there, or the plug does not fit. */
  readonly missing: readonly { readonly of: string; readonly code: 'no-lead' | 'no-fit' }[];
}

/** The moves from how things are plugged in to how they are assigned. None where all is as it should be. */
export function movesTo(build: Build, to: Assignments): Moves {
  const missing: Moves['missing'][number][] = [];
  const wishes = [
    ...portWishes(to, missing),
    ...fanWishes(build, to, missing),
    ...branchWishes(build, to, missing),
  ];
  const moving = wishes.filter(({ plug, connector }) => seatOf(build, plug)?.connector !== connector);
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

/** The seat of a plug on a connector in which nothing hangs over, the least turned first. */
function wholeSeat(build: Build, plug: PlugRef, connector: string): Seat | undefined {
  return placesOf(build, plug)
    .filter((seat) => seat.connector === connector)
    .map((seat) => layDown(seatedPlug(build, seat)))
    .map((laid) => ({ seat: laid.seat, over: overhangOf(laid).length }))
    .toSorted((a, b) => a.over - b.over || a.seat.turn - b.seat.turn)[0]?.seat;
}

function portWishes({ ports, ofDrives }: Assignments, missing: Moves['missing'][number][]): readonly Wish[] {
  return ports.drives.flatMap(({ drive, port }): readonly Wish[] => {
    if (port === undefined) return [];
    const lead = ofDrives.dataLeads.get(drive);
    if (lead === undefined) {
      missing.push({ of: drive, code: 'no-lead' });
      return [];
    }
    return [{ plug: { lead: lead.lead, plug: lead.plug }, connector: port, of: drive }];
  });
}

function fanWishes(
  build: Build,
  { fans, ofFans }: Assignments,
  missing: Moves['missing'][number][],
): readonly Wish[] {
  // A fan that is on the right hub already keeps its outlet, where it need not be the one that reports the speed.
  const staying = new Map<string, string>();
  for (const { fan, header, outlet } of fans.fans) {
    const now = ofFans.now.get(fan);
    if (now !== undefined && now.header === header && outlet !== 1) staying.set(now.connector, fan);
  }
  return fans.fans.flatMap(({ fan, header, outlet }): readonly Wish[] => {
    if (header === undefined) return [];
    const connector =
      outlet === undefined || outlet === 1
        ? outletAt(ofFans, header, outlet)
        : ([...staying].find(([, who]) => who === fan)?.[0] ??
          ofFans.hubs.get(header)?.outlets.find((id, at) => at > 0 && !staying.has(id)));
    const plug = leadOf(build, fan)?.plugs[0];
    if (connector === undefined || plug === undefined) {
      missing.push({ of: fan, code: 'no-lead' });
      return [];
    }
    staying.set(connector, fan);
    return [{ plug: { lead: fan, plug: plug.id }, connector, of: fan }];
  });
}

/** A header by itself, or the first outlet of its hub. */
function outletAt(
  { hubs }: Assignments['ofFans'],
  header: string,
  outlet: number | undefined,
): string | undefined {
  return outlet === undefined ? header : hubs.get(header)?.outlets[outlet - 1];
}

function branchWishes(
  build: Build,
  { branches }: Assignments,
  missing: Moves['missing'][number][],
): readonly Wish[] {
  const used = new Set<string>();
  return branches.drives.flatMap(({ drive, branch, moved }): readonly Wish[] => {
    const socket = unitsOf(build)
      .find(({ id }) => id === drive)
      ?.connectors.find(isDrivePower);
    const lead = branch === undefined ? undefined : leadOf(build, branch);
    if (socket === undefined || lead === undefined) return [];
    const has = build.seats.some((seat) => seat.lead === lead.id && seat.connector === socket.id);
    if (has && !moved) return [];
    const free = drivePlugs(build, lead).find(
      (plug) => !used.has(`${lead.id} ${plug}`) && seatOf(build, { lead: lead.id, plug }) === undefined,
    );
    if (free === undefined) {
      missing.push({ of: drive, code: 'no-lead' });
      return [];
    }
    used.add(`${lead.id} ${free}`);
    return [{ plug: { lead: lead.id, plug: free }, connector: socket.id, of: drive }];
  });
}
