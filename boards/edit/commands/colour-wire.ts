import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { WireColourZ } from '../../document/lead';
import { LIMITS } from '../../document/limits';
import { leadName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeLead } from '../change';
import { defineCommand } from '../definition';

/** Gives a wire, counted from 0 within its lead, another colour, with a stripe or without. */
export const colourWire = defineCommand({
  name: 'colour-wire',
  args: z.strictObject({
    lead: IdZ,
    wire: z
      .int()
      .min(0)
      .max(LIMITS.wiresPerLead - 1),
    colour: WireColourZ,
    stripe: WireColourZ.nullable(),
  }),
  label: (build, { lead }) => `Colour a wire of ${leadName(build, lead)}`,
  apply: (build, { lead: id, wire: index, colour, stripe }) =>
    changeLead(build, id, (lead) => {
      const wire = lead.wires[index];
      if (wire === undefined) return refuse({ code: 'unknown-wire', lead: id, wire: index });
      const plain = { from: wire.from, to: wire.to, colour };
      return ok({ ...lead, wires: lead.wires.with(index, stripe === null ? plain : { ...plain, stripe }) });
    }),
});
