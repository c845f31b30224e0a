import type { Build, Seat } from '../../document/build';
import { samePlug } from '../../document/lookup';
import { fitSeat } from '../../fit/fit-seat';

/** Two plugs that have changed places. */
interface Exchange {
  readonly build: Build;
  /** The first of the two where the other one was. */
  readonly seat: Seat;
}

/** The build in which two plugs have changed places; undefined where one of them does not go in there. */
export function exchanged(build: Build, one: Seat, other: Seat): Exchange | undefined {
  const here = inPlaceOf(one, other);
  const there = inPlaceOf(other, one);
  const seats = build.seats.map((each) => {
    if (samePlug(each, one)) return here;
    return samePlug(each, other) ? there : each;
  });
  const put: Build = { ...build, seats };
  const goesIn = [here, there].every((seat) => fitSeat(put, seat).refusals.length === 0);
  return goesIn ? { build: put, seat: here } : undefined;
}

function inPlaceOf(seat: Seat, { connector, at, turn }: Seat): Seat {
  return { ...seat, connector, at, turn };
}
