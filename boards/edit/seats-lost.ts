import type { Build, Seat } from '../document/build';
import { fitSeat } from '../fit/fit-seat';

/** The seats on a connector that fitted before its change and do not fit after it. */
export function seatsLost(before: Build, after: Build, connector: string): readonly Seat[] {
  const fits = (build: Build, seat: Seat) => fitSeat(build, seat).refusals.length === 0;
  return after.seats.filter(
    (seat) => seat.connector === connector && fits(before, seat) && !fits(after, seat),
  );
}
