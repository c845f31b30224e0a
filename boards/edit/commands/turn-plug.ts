import { z } from 'zod';
import { refuse } from '../../base/result';
import { plugName } from '../../document/names';
import { IdZ } from '../../document/text';
import { fitSeat } from '../../fit/fit-seat';
import { defineCommand } from '../definition';
import { findPlug, findSeat } from '../find';
import { turnedSeats } from '../turned-seats';
import { seatPlug } from './seat-plug';

/** Turns a seated plug where it sits, clockwise. Refuses when it fits nowhere near that way round. */
export const turnPlug = defineCommand({
  name: 'turn-plug',
  args: z.strictObject({
    lead: IdZ,
    plug: IdZ,
    by: z.union([z.literal(90), z.literal(180), z.literal(270)]),
  }),
  label: (build, args) => `Turn ${plugName(build, args)}`,
  apply: (build, { by, ...ref }) => {
    const plug = findPlug(build, ref);
    if (!plug.ok) return plug;
    const seat = findSeat(build, ref);
    if (!seat.ok) return seat;
    const tried = turnedSeats(seat.value, plug.value, by).map((turned) => ({
      turned,
      fit: fitSeat(build, turned),
    }));
    const [best] = tried
      .filter(({ fit }) => fit.refusals.length === 0)
      .toSorted((a, b) => a.fit.overhang.length - b.fit.overhang.length);
    if (best !== undefined) return seatPlug.run(build, best.turned);
    const refusals = tried[0]?.fit.refusals ?? [];
    return refuse({ code: 'no-fit', ...ref, connector: seat.value.connector, refusals });
  },
});
