import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { plugName } from '../../document/names';
import { gridIndex } from '../../document/numbering';
import { IdZ, LabelZ } from '../../document/text';
import { changePlug } from '../change';
import { defineCommand } from '../definition';

/** Says which hole of a plug has the triangle or the plus; null for none. */
export const markPlug = defineCommand({
  name: 'mark-plug',
  args: z.strictObject({ lead: IdZ, plug: IdZ, mark: LabelZ.nullable() }),
  label: (build, args) => `Mark ${plugName(build, args)}`,
  apply: (build, { mark, ...ref }) =>
    changePlug(build, ref, (lead, plug) => {
      if (mark !== null && gridIndex(plug.grid).cellOf(mark) === undefined)
        return refuse({ code: 'unknown-hole', ...ref, hole: mark });
      const { mark: _, ...plain } = plug;
      const next = mark === null ? plain : { ...plain, mark };
      return ok({ ...lead, plugs: lead.plugs.map((other) => (other === plug ? next : other)) });
    }),
});
