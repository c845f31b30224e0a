import { z } from 'zod';
import { ok, type Result } from '../../base/result';
import { type Build, type Seat, SeatZ } from '../../document/build';
import { LIMITS } from '../../document/limits';
import { type PlugRef, plugKey } from '../../document/lookup';
import { plugName } from '../../document/names';
import { IdZ } from '../../document/text';
import { defineCommand } from '../definition';
import { findPlugsOnce } from '../find';
import type { Refusal } from '../refusal';
import { seatInTurn } from './seat-plug';

/**
 * Seats, moves and takes off any number of plugs as one step: everything named comes off first, so that two
 * plugs can change places. Refuses as a whole where one seat is not possible, and where a plug is named twice.
 */
export const arrangePlugs = defineCommand({
  name: 'arrange-plugs',
  args: z.strictObject({
    seats: z.array(SeatZ).max(LIMITS.seats),
    off: z.array(z.strictObject({ lead: IdZ, plug: IdZ })).max(LIMITS.seats),
  }),
  label: (build, { seats, off }) => {
    const [only, ...more] = [...seats, ...off];
    return only && more.length === 0
      ? `Arrange ${plugName(build, only)}`
      : `Arrange ${more.length + 1} plugs`;
  },
  apply: (build, { seats, off }) => {
    const named: readonly PlugRef[] = [...seats, ...off];
    const found = findPlugsOnce(build, named);
    if (!found.ok) return found;
    const coming = new Set(named.map(plugKey));
    const bare: Build = { ...build, seats: build.seats.filter((seat) => !coming.has(plugKey(seat))) };
    return inPlace(build, seatInTurn(ok(bare), seats), seats);
  },
});

/** The seats in the order they had, so that arranging a plug where it sits changes nothing. */
function inPlace(
  before: Build,
  after: Result<Build, Refusal>,
  seats: readonly Seat[],
): Result<Build, Refusal> {
  if (!after.ok) return after;
  const { value } = after;
  const now = new Map(value.seats.map((seat) => [plugKey(seat), seat]));
  const had = new Set(before.seats.map(plugKey));
  const kept = before.seats.flatMap((was) => now.get(plugKey(was)) ?? []);
  const fresh = seats.filter((seat) => !had.has(plugKey(seat)));
  return ok({ ...value, seats: [...kept, ...fresh] });
}
