import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { samePlug } from '../../document/lookup';
import { plugName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changePlug } from '../change';
import { defineCommand } from '../definition';
import { singlesOf } from '../single-plugs';

/** Splits a block into single-hole plugs, one for each contact, so that each wire can go to its own pin. */
export const splitPlug = defineCommand({
  name: 'split-plug',
  args: z.strictObject({ lead: IdZ, plug: IdZ }),
  label: (build, args) => `Split ${plugName(build, args)}`,
  apply: (build, ref) => {
    const off = { ...build, seats: build.seats.filter((seat) => !samePlug(seat, ref)) };
    return changePlug(off, ref, (lead, plug) => {
      if (plug.grid.rows * plug.grid.cols === 1) return refuse({ code: 'single-already', ...ref });
      if (plug.family !== 'pin-header') return refuse({ code: 'shell', ...ref });
      const singles = singlesOf(lead, plug);
      if (singles.length === 0) return refuse({ code: 'no-contact', ...ref });
      const plugs = lead.plugs.flatMap((other) =>
        other === plug ? singles.map((single) => single.plug) : [other],
      );
      if (plugs.length > LIMITS.plugsPerLead)
        return refuse({ code: 'full', what: 'plugs', limit: LIMITS.plugsPerLead });
      const ends = new Map(singles.map(({ hole, end }) => [`${plug.id}.${hole}`, end]));
      const wires = lead.wires.map((wire) => ({
        ...wire,
        from: ends.get(wire.from) ?? wire.from,
        to: ends.get(wire.to) ?? wire.to,
      }));
      return ok({ ...lead, plugs, wires });
    });
  },
});
