import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { samePlug } from '../../document/lookup';
import { plugName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changePlug } from '../change';
import { defineCommand } from '../definition';
import { withRoutes } from '../routes';
import { singlesOf } from '../single-plugs';
import { splitRoutes, splitRuns } from '../split-runs';

/** Splits a block into single-hole plugs, one for each contact, so that each wire can go to its own pin. */
export const splitPlug = defineCommand({
  name: 'split-plug',
  args: z.strictObject({ lead: IdZ, plug: IdZ }),
  label: (build, args) => `Split ${plugName(build, args)}`,
  apply: (build, ref) => {
    const off = { ...build, seats: build.seats.filter((seat) => !samePlug(seat, ref)) };
    let into: readonly string[] = [];
    const split = changePlug(off, ref, (lead, plug) => {
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
      into = singles.map((single) => single.plug.id);
      const cable = lead.cable && splitRuns(lead.cable, plug.id, into);
      return ok({ ...lead, plugs, wires, ...(cable && { cable }) });
    });
    if (!split.ok || split.value.routes === undefined) return split;
    const routes = splitRoutes(split.value.routes, ref, into);
    if (routes.length > LIMITS.routes)
      return refuse({ code: 'full', what: 'chosen ways', limit: LIMITS.routes });
    return ok(withRoutes(split.value, routes));
  },
});
