import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { holeState } from '../../document/lookup';
import { plugName } from '../../document/names';
import { gridIndex } from '../../document/numbering';
import { IdZ, LabelZ } from '../../document/text';
import { changePlug } from '../change';
import { defineCommand } from '../definition';

/** The trade's remedy: unlatch a contact and push it into another hole of the same plug, with all its wires. */
export const moveContact = defineCommand({
  name: 'move-contact',
  args: z.strictObject({ lead: IdZ, plug: IdZ, from: LabelZ, to: LabelZ }),
  label: (build, args) => `Move a contact of ${plugName(build, args)}`,
  apply: (build, { from, to, ...ref }) =>
    changePlug(build, ref, (lead, plug) => {
      for (const hole of [from, to]) {
        if (gridIndex(plug.grid).cellOf(hole) === undefined)
          return refuse({ code: 'unknown-hole', ...ref, hole });
      }
      if (holeState(lead, plug, from) !== 'contact')
        return refuse({ code: 'no-contact', ...ref, hole: from });
      if (from === to) return ok(lead);
      const target = holeState(lead, plug, to);
      if (target === 'blocked') return refuse({ code: 'hole-blocked', ...ref, hole: to });
      if (target === 'contact') return refuse({ code: 'hole-taken', ...ref, hole: to });
      const moved = (end: string) => (end === `${plug.id}.${from}` ? `${plug.id}.${to}` : end);
      const wires = lead.wires.map((wire) => ({ ...wire, from: moved(wire.from), to: moved(wire.to) }));
      return ok({ ...lead, wires });
    }),
});
