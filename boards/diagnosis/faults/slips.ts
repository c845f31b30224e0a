import type { Build, Seat } from '../../document/build';
import { connectorOf, leadOf, plugOf } from '../../document/lookup';
import { fitSeat } from '../../fit/fit-seat';
import { placesOf } from '../../fit/places';

/** How a plug may have been put wrongly. */
export type SlipKind = 'off' | 'turned' | 'shifted' | 'elsewhere' | 'exchanged';

/** One wrong seating: the build as it would be, and which leads it concerns. */
export interface Slip {
  readonly kind: SlipKind;
  readonly build: Build;
  readonly leads: readonly string[];
  /** Where the plug went; undefined when it is off. */
  readonly seat?: Seat;
  /** The connectors on which something is otherwise. */
  readonly connectors: readonly string[];
  readonly name: string;
}

const sameSeat = (a: Seat, b: Seat) => a.lead === b.lead && a.plug === b.plug;

/** Every wrong seating of one plug: left off, turned, shifted, on another header, exchanged with another. */
export function slipsOf(build: Build, seat: Seat): readonly Slip[] {
  const seats = build.seats.filter((each) => !sameSeat(each, seat));
  const leads = [seat.lead];
  const lead = nameOf(build, seat);
  const off: Slip = {
    kind: 'off',
    build: { ...build, seats },
    leads,
    connectors: [seat.connector],
    name: `${lead} is not plugged in.`,
  };
  const moved = placesOf(off.build, seat)
    .filter((place) => place.connector !== seat.connector || !sameCells(place, seat))
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

function sameCells(place: Seat, seat: Seat): boolean {
  return place.turn === seat.turn && place.at[0] === seat.at[0] && place.at[1] === seat.at[1];
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

/** Plugs of one shape that have changed places and go in there. Each pair once, from the first of the two. */
function exchangesOf(build: Build, seat: Seat): readonly Slip[] {
  const own = plugOf(build, seat);
  return build.seats.slice(build.seats.findIndex((each) => sameSeat(each, seat)) + 1).flatMap((other) => {
    const its = plugOf(build, other);
    if (own?.grid.rows !== its?.grid.rows || own?.grid.cols !== its?.grid.cols) return [];
    const here: Seat = { ...seat, connector: other.connector, at: other.at, turn: other.turn };
    const there: Seat = { ...other, connector: seat.connector, at: seat.at, turn: seat.turn };
    const seats = build.seats.map((each) => {
      if (sameSeat(each, seat)) return here;
      return sameSeat(each, other) ? there : each;
    });
    const put: Build = { ...build, seats };
    if ([here, there].some((each) => fitSeat(put, each).refusals.length > 0)) return [];
    return [
      {
        kind: 'exchanged' as const,
        build: put,
        leads: [seat.lead, other.lead],
        connectors: [seat.connector, other.connector],
        name: `${nameOf(build, seat)} and ${nameOf(build, other)} have changed places.`,
      },
    ];
  });
}

function nameOf(build: Build, { lead }: Seat): string {
  return leadOf(build, lead)?.name ?? lead;
}

function whereWords(build: Build, from: Seat, to: Seat, kind: SlipKind): string {
  const header = connectorOf(build.board, to.connector)?.print ?? to.connector;
  if (kind === 'turned') return `is the wrong way round on ${header}`;
  const place = `row ${to.at[0] + 1}, column ${to.at[1] + 1}`;
  const turned = to.turn === from.turn ? '' : `, turned by ${(to.turn - from.turn + 360) % 360}°`;
  return kind === 'elsewhere'
    ? `is on ${header}, at ${place}${turned}`
    : `is shifted on ${header} to ${place}${turned}`;
}
