import { listed } from '../../base/listed';
import type { Build, Seat } from '../../document/build';
import { plugOf, samePlug, sameSeat } from '../../document/lookup';
import { connectorName, leadName } from '../../document/names';
import { jointsKept } from '../../fit/joints';
import { placesOf } from '../../fit/places';
import { seatedPlug } from '../../fit/seated-plug';
import { exchanged } from './exchange';
import { placeId, seatingId } from './seating-id';

/** How a plug may have been put wrongly. */
export type SlipKind = 'off' | 'turned' | 'shifted' | 'elsewhere' | 'exchanged';

/** One wrong seating: the build as it would be, and which leads it concerns. */
export interface Slip {
  readonly kind: SlipKind;
  readonly build: Build;
  readonly leads: readonly string[];
  /** Where the plug went, of two that changed places the first; undefined when it is off. */
  readonly seat?: Seat;
  /** The connectors on which something is otherwise. */
  readonly connectors: readonly string[];
  readonly name: string;
}

/** Every wrong seating of one plug: left off, turned, shifted, on another header, exchanged with another. */
export function slipsOf(build: Build, seat: Seat): readonly Slip[] {
  const seats = build.seats.filter((each) => !samePlug(each, seat));
  const leads = [seat.lead];
  const lead = leadName(build, seat.lead);
  const off: Slip = {
    kind: 'off',
    build: { ...build, seats },
    leads,
    connectors: [seat.connector],
    name: `${lead} is not plugged in.`,
  };
  const moved = placesOf(off.build, seat)
    .filter((place) => !sameSeat(place, seat))
    .map((place): Slip => {
      const kind = kindOf(build, seat, place);
      const put = { ...build, seats: [...seats, place] };
      return {
        kind,
        build: put,
        leads,
        seat: place,
        connectors: [seat.connector, place.connector],
        name: `${lead} ${whereWords(build, seat, place, kind)}.`,
      };
    });
  return [off, ...moved, ...exchangesOf(build, seat)];
}

/** Turned means on the same posts the other way round. */
function kindOf(build: Build, from: Seat, to: Seat): SlipKind {
  if (to.connector !== from.connector) return 'elsewhere';
  return (to.turn - from.turn + 360) % 360 === 180 && middle(build, from) === middle(build, to)
    ? 'turned'
    : 'shifted';
}

/** The middle of the cells that a plug covers, as text to compare; half turns keep rows and columns. */
function middle(build: Build, seat: Seat): string {
  const grid = plugOf(build, seat)?.grid;
  const [down, along] = [(grid?.rows ?? 1) - 1, (grid?.cols ?? 1) - 1];
  const quarter = seat.turn === 90 || seat.turn === 270;
  const [rows, cols] = quarter ? [along, down] : [down, along];
  // The seat's cell is the one under the plug's first cell: turned by 180 that is the last row and column.
  const row = seat.at[0] + (seat.turn === 180 || seat.turn === 270 ? -rows / 2 : rows / 2);
  const col = seat.at[1] + (seat.turn === 180 || seat.turn === 90 ? -cols / 2 : cols / 2);
  return `${row}/${col}`;
}

/** The id of the fault that a wrong seating is, from the seat that is right. */
export function slipId(seat: Seat, { kind, seat: to, leads }: Slip): string {
  const placed = to && kind !== 'exchanged';
  return seatingId(seat, kind, placed ? placeId(to) : leads.slice(1).join('+'));
}

/** Plugs of one shape that have changed places and go in there. Each pair once, from the first of the two. */
function exchangesOf(build: Build, seat: Seat): readonly Slip[] {
  const own = plugOf(build, seat);
  return build.seats.slice(build.seats.findIndex((each) => samePlug(each, seat)) + 1).flatMap((other) => {
    const its = plugOf(build, other);
    if (own?.grid.rows !== its?.grid.rows || own?.grid.cols !== its?.grid.cols) return [];
    const put = exchanged(build, seat, other);
    if (put === undefined) return [];
    return [
      {
        ...put,
        kind: 'exchanged' as const,
        leads: [seat.lead, other.lead],
        connectors: [seat.connector, other.connector],
        name: `${leadName(build, seat.lead)} and ${leadName(build, other.lead)} have changed places.`,
      },
    ];
  });
}

function whereWords(build: Build, from: Seat, to: Seat, kind: SlipKind): string {
  const header = connectorName(build, to.connector);
  if (kind === 'turned') return `is the wrong way round on ${header}`;
  const where = `${header}${contactWords(build, from, to)}`;
  return kind === 'elsewhere' ? `is on ${where}` : `is shifted on ${where}`;
}

/** A plug of which each hole is named; of a larger one the first that meets a pin says where it is. */
const NAMED_MOST = 3;

/** Which hole of a plug meets which pin, as somebody would see it. */
function contactWords(build: Build, from: Seat, to: Seat): string {
  const contacts = new Map(jointsKept(seatedPlug(build, to)).map(({ hole, pin }) => [hole, pin?.pin]));
  const met = [...contacts].filter(([, pin]) => pin !== undefined);
  const [first] = met;
  if (first === undefined) return ', where no wire of it meets a pin';
  if (contacts.size > NAMED_MOST) {
    const turn = (to.turn - from.turn + 360) % 360;
    return `: hole ${first[0]} on pin ${first[1]}${turn === 0 ? '' : `, turned by ${turn}°`}`;
  }
  const [holes, pins] = [listed(met.map(([hole]) => hole)), listed(met.map(([, pin]) => pin ?? ''))];
  const only = met.length < contacts.size ? 'only ' : '';
  return met.length === 1
    ? `: ${only}hole ${holes} on pin ${pins}`
    : `: ${only}holes ${holes} on pins ${pins}`;
}
