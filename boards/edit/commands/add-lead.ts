import { z } from 'zod';
import { refuse } from '../../base/result';
import { LeadZ } from '../../document/lead';
import { LIMITS } from '../../document/limits';
import { leadOf } from '../../document/lookup';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';

/** Adds a lead to the case or to the extras. Refuses an id that is taken and a lead that contradicts itself. */
export const addLead = defineCommand({
  name: 'add-lead',
  args: z.strictObject({ lead: LeadZ, to: z.enum(['case', 'extras']) }),
  label: (_, { lead }) => `Add ${lead.name}`,
  apply: (build, { lead, to }) => {
    if (leadOf(build, lead.id) !== undefined) return refuse({ code: 'id-taken', kind: 'lead', id: lead.id });
    const leads = to === 'case' ? build.case.leads : build.extras;
    if (leads.length >= LIMITS.leads) return refuse({ code: 'full', what: 'leads', limit: LIMITS.leads });
    const next = [...leads, lead];
    return soundBuild(
      to === 'case' ? { ...build, case: { ...build.case, leads: next } } : { ...build, extras: next },
    );
  },
});
