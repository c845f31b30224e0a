import { ok, type Result } from '../base/result';
import type { Build, Seat } from '../document/build';
import { anyConnectorOf, plugOf } from '../document/lookup';
import { fitSeat } from '../fit/fit-seat';
import type { Refusal } from './refusal';

/** Puts plugs back one after another, as far as plug and connector are still there and it still fits. */
export function reseat(bare: Build, seats: readonly Seat[]): Result<Build, Refusal> {
  let build = bare;
  for (const seat of seats) {
    if (plugOf(build, seat) === undefined) continue;
    if (anyConnectorOf(build, seat.connector) === undefined) continue;
    if (fitSeat(build, seat).refusals.length > 0) continue;
    build = { ...build, seats: [...build.seats, seat] };
  }
  return ok(build);
}
