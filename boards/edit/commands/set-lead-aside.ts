import { z } from 'zod';
import { ok } from '../../base/result';
import { leadName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeLead } from '../change';
import { defineCommand } from '../definition';
import { unaside } from '../set-aside';

/** Says that a lead is left off on purpose, or that it is wanted again. Plugs that sit stay where they are. */
export const setLeadAside = defineCommand({
  name: 'set-lead-aside',
  args: z.strictObject({ lead: IdZ, aside: z.boolean() }),
  label: (build, { lead, aside }) => `${aside ? 'Set aside' : 'Take up'} ${leadName(build, lead)}`,
  apply: (build, { lead: id, aside }) =>
    changeLead(build, id, (lead) => ok(aside ? { ...lead, setAside: true } : unaside(lead))),
});
