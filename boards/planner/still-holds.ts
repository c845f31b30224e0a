import type { Build, Seat } from '../document/build';
import { leadsOf, type PlugRef, samePlug, sameSeat, seatOf } from '../document/lookup';

/** The seats of a plan with the build that it was made for. */
export interface PlanFor {
  readonly build: Build;
  readonly seats: readonly Seat[];
}

/**
 * Whether a plan is still the best one for a build as it has become: nothing but seats has changed, and every
 * plug sits where it did, where the plan has it, or nowhere. On the way to a plan every other arrangement
 * comes nearer by no more moves than the plan does, so none can overtake it. What the plan leaves where it
 * was has to sit there still.
 */
export function stillHolds({ build, seats }: PlanFor, now: Build): boolean {
  if (!sameThings(now.board.connectors, build.board.connectors)) return false;
  if (!sameThings(leadsOf(now), leadsOf(build))) return false;
  const planned = (ref: PlugRef) => seats.find((seat) => samePlug(seat, ref));
  const isAt = (seat: Seat, other: Seat | undefined) => other !== undefined && sameSeat(seat, other);
  return (
    now.seats.every((seat) => isAt(seat, seatOf(build, seat)) || isAt(seat, planned(seat))) &&
    build.seats.every((seat) => !isAt(seat, planned(seat)) || seatOf(now, seat) !== undefined)
  );
}

/** The same objects in the same order: immutable ones, so that identity stands for content. */
function sameThings(some: readonly object[], others: readonly object[]): boolean {
  return some.length === others.length && some.every((each, at) => each === others[at]);
}
