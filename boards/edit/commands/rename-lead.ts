import { z } from 'zod';
import { ok } from '../../base/result';
import { leadName } from '../../document/names';
import { IdZ, NameZ } from '../../document/text';
import { changeLead } from '../change';
import { defineCommand } from '../definition';

/** Gives a lead another name. */
export const renameLead = defineCommand({
  name: 'rename-lead',
  args: z.strictObject({ lead: IdZ, name: NameZ }),
  label: (build, { lead }) => `Rename ${leadName(build, lead)}`,
  apply: (build, { lead: id, name }) => changeLead(build, id, (lead) => ok({ ...lead, name })),
});
