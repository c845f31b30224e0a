import type { Build, Seat } from '../document/build';
import type { Cell } from '../document/grid';
import { gridIndex } from '../document/numbering';
import { fitSeat } from '../fit/fit-seat';
import { landingsOf } from '../fit/landing';
import { seatedPlug } from '../fit/seated-plug';

/** A build after a change of one of its connectors, with the plugs on it where they were by their pins. */
interface Followed {
  readonly build: Build;
  /** The seats of that build in which the plug does not fit any more, or cannot be on the pins that it was on. */
  readonly lost: readonly Seat[];
}

/**
 * Lets the plugs on a connector follow its labels into a grid of another size, as what is known of its pins
 * does: where counting begins on the right, a further column moves every number. A plug whose pins would
 * come to lie otherwise to each other cannot follow.
 */
export function withFollowingSeats(before: Build, after: Build, connector: string): Followed {
  const torn = new Set<Seat>();
  const seats = after.seats.map((seat) => {
    if (seat.connector !== connector) return seat;
    const [by = [0, 0], other] = shiftsOf(before, after, seat);
    const [rows, cols] = by;
    const moved: Seat =
      rows === 0 && cols === 0 ? seat : { ...seat, at: [seat.at[0] + rows, seat.at[1] + cols] };
    if (other !== undefined) torn.add(moved);
    return moved;
  });
  const build = { ...after, seats };
  const fits = (there: Build, seat: Seat) => fitSeat(there, seat).refusals.length === 0;
  const lost = seats.filter((seat, at) => {
    const old = after.seats[at];
    if (old === undefined || seat.connector !== connector) return false;
    return torn.has(seat) || (fits(before, old) && !fits(build, seat));
  });
  return { build, lost };
}

/** By how many rows and columns the labels under a plug move, each way once; labels that go are left aside. */
function shiftsOf(before: Build, after: Build, seat: Seat): readonly Cell[] {
  const { cellOf } = gridIndex(seatedPlug(after, seat).connector.grid);
  const shifts = landingsOf(seatedPlug(before, seat)).flatMap(
    ({ pin, cell: [row, col] }): readonly Cell[] => {
      const next = pin && cellOf(pin.pin);
      return next ? [[next[0] - row, next[1] - col]] : [];
    },
  );
  return [...new Map(shifts.map((shift) => [shift.join(' '), shift])).values()];
}
