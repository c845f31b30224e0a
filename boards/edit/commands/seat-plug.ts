import { ok, type Result, refuse } from '../../base/result';
import { type Build, type Seat, SeatZ } from '../../document/build';
import { LIMITS } from '../../document/limits';
import { anyConnectorOf, samePlug, seatOf } from '../../document/lookup';
import { plugName } from '../../document/names';
import { fitSeat } from '../../fit/fit-seat';
import { changeLead } from '../change';
import { defineCommand } from '../definition';
import { findPlug } from '../find';
import type { Refusal } from '../refusal';
import { unaside } from '../set-aside';

/** Puts a plug on a connector, or moves one that sits already. Refuses what geometry refuses. */
export const seatPlug = defineCommand({
  name: 'seat-plug',
  args: SeatZ,
  label: (build, seat) => `${seatOf(build, seat) ? 'Move' : 'Seat'} ${plugName(build, seat)}`,
  apply: place,
});

/** One seat after another, as long as each can be. */
export function seatInTurn(build: Result<Build, Refusal>, seats: readonly Seat[]): Result<Build, Refusal> {
  return seats.reduce((so, seat) => (so.ok ? seatPlug.run(so.value, seat) : so), build);
}

function place(build: Build, seat: Seat): Result<Build, Refusal> {
  const plug = findPlug(build, seat);
  if (!plug.ok) return plug;
  if (anyConnectorOf(build, seat.connector) === undefined)
    return refuse({ code: 'unknown-connector', connector: seat.connector });
  const { refusals } = fitSeat(build, seat);
  if (refusals.length > 0) {
    const { lead, plug, connector } = seat;
    return refuse({ code: 'no-fit', lead, plug, connector, refusals });
  }
  if (seatOf(build, seat) !== undefined)
    return ok({ ...build, seats: build.seats.map((other) => (samePlug(other, seat) ? seat : other)) });
  if (build.seats.length >= LIMITS.seats) return refuse({ code: 'full', what: 'seats', limit: LIMITS.seats });
  return changeLead({ ...build, seats: [...build.seats, seat] }, seat.lead, (lead) => ok(unaside(lead)));
}
