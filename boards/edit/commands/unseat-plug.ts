import { z } from 'zod';
import { ok } from '../../base/result';
import { samePlug } from '../../document/lookup';
import { plugName } from '../../document/names';
import { IdZ } from '../../document/text';
import { defineCommand } from '../definition';
import { findSeat } from '../find';

/** Takes a plug off its pins. */
export const unseatPlug = defineCommand({
  name: 'unseat-plug',
  args: z.strictObject({ lead: IdZ, plug: IdZ }),
  label: (build, args) => `Take off ${plugName(build, args)}`,
  apply: (build, ref) => {
    const seat = findSeat(build, ref);
    if (!seat.ok) return seat;
    return ok({ ...build, seats: build.seats.filter((other) => !samePlug(other, ref)) });
  },
});
