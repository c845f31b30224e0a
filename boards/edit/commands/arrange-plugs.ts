import { z } from 'zod';
import { ok, type Result, refuse } from '../../base/result';
import { type Build, type Seat, SeatZ } from '../../document/build';
import { LIMITS } from '../../document/limits';
import { type PlugRef, samePlug } from '../../document/lookup';
import { plugName } from '../../document/names';
import { IdZ } from '../../document/text';
import { defineCommand } from '../definition';
import { findPlug } from '../find';
import type { Refusal } from '../refusal';
import { seatPlug } from './seat-plug';

const PlugRefZ = z.strictObject({ lead: IdZ, plug: IdZ });

/**
 * Seats, moves and takes off any number of plugs as one step: everything named comes off first, so that two
 * plugs can change places. Refuses as a whole where one seat is not possible, and where a plug is named twice.
 */
export const arrangePlugs = defineCommand({
  name: 'arrange-plugs',
  args: z.strictObject({
    seats: z.array(SeatZ).max(LIMITS.seats),
    off: z.array(PlugRefZ).max(LIMITS.seats),
  }),
  label: (build, { seats, off }) => {
    const [only, ...more] = [...seats, ...off];
    return only && more.length === 0
      ? `Arrange ${plugName(build, only)}`
      : `Arrange ${more.length + 1} plugs`;
  },
  apply: (build, { seats, off }) => {
    const named: readonly PlugRef[] = [...seats, ...off];
    for (const [at, ref] of named.entries()) {
      const plug = findPlug(build, ref);
      if (!plug.ok) return plug;
      if (named.slice(0, at).some((other) => samePlug(other, ref)))
        return refuse({ code: 'plug-twice', lead: ref.lead, plug: ref.plug });
    }
    const bare: Build = {
      ...build,
      seats: build.seats.filter((seat) => !named.some((ref) => samePlug(ref, seat))),
    };
    return inPlace(build, seats.reduce(seatNext, ok(bare)), seats);
  },
});

function seatNext(so: Result<Build, Refusal>, seat: Seat): Result<Build, Refusal> {
  return so.ok ? seatPlug.run(so.value, seat) : so;
}

/** The seats in the order they had, so that arranging a plug where it sits changes nothing. */
function inPlace(
  before: Build,
  after: Result<Build, Refusal>,
  seats: readonly Seat[],
): Result<Build, Refusal> {
  if (!after.ok) return after;
  const { value } = after;
  const kept = before.seats.flatMap((was) => value.seats.find((seat) => samePlug(seat, was)) ?? []);
  const fresh = seats.filter((seat) => !before.seats.some((was) => samePlug(was, seat)));
  return ok({ ...value, seats: [...kept, ...fresh] });
}
