import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { leadName } from '../../document/names';
import { FanRatingZ } from '../../document/rating';
import { IdZ } from '../../document/text';
import { partKindOf } from '../../signals/part-kinds';
import { isFan } from '../../signals/part-traits';
import { changeLead } from '../change';
import { defineCommand } from '../definition';

/** Says what a fan takes, as its label has it; null for not read. Refuses a part that is no fan. */
export const rateFan = defineCommand({
  name: 'rate-fan',
  args: z.strictObject({ lead: IdZ, part: IdZ, fan: FanRatingZ.nullable() }),
  label: (build, { lead }) => `Rate ${leadName(build, lead)}`,
  apply: (build, { lead: id, part: partId, fan }) =>
    changeLead(build, id, (lead) => {
      const part = lead.parts.find((one) => one.id === partId);
      if (part === undefined) return refuse({ code: 'unknown-part', lead: id, part: partId });
      if (!isFan(partKindOf(part.kind))) return refuse({ code: 'no-fan', lead: id, part: partId });
      const { fan: _, ...plain } = part;
      const next = fan === null ? plain : { ...plain, fan };
      return ok({ ...lead, parts: lead.parts.map((one) => (one === part ? next : one)) });
    }),
});
