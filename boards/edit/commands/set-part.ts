import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { ConditionZ, LampColourZ, type Part } from '../../document/lead';
import { leadName } from '../../document/names';
import { IdZ } from '../../document/text';
import { partKindOf } from '../../signals/part-kinds';
import { hasOneColour, isSwitch } from '../../signals/part-traits';
import { changeLead } from '../change';
import { defineCommand } from '../definition';

/** Says which colour an LED has, or that a switch is stuck or broken; null for not known and for sound. */
export const setPart = defineCommand({
  name: 'set-part',
  args: z.strictObject({
    lead: IdZ,
    part: IdZ,
    colour: LampColourZ.nullable(),
    condition: ConditionZ.nullable(),
  }),
  label: (build, { lead }) => `Describe a part of ${leadName(build, lead)}`,
  apply: (build, { lead: id, part: partId, colour, condition }) =>
    changeLead(build, id, (lead) => {
      const part = lead.parts.find((one) => one.id === partId);
      if (part === undefined) return refuse({ code: 'unknown-part', lead: id, part: partId });
      const kind = partKindOf(part.kind);
      if (colour !== null && !hasOneColour(kind))
        return refuse({ code: 'no-colour', lead: id, part: partId });
      if (condition !== null && !isSwitch(kind)) return refuse({ code: 'no-switch', lead: id, part: partId });
      const { colour: _, condition: __, ...plain } = part;
      const next: Part = {
        ...plain,
        ...(colour !== null && { colour }),
        ...(condition !== null && { condition }),
      };
      return ok({ ...lead, parts: lead.parts.map((one) => (one === part ? next : one)) });
    }),
});
