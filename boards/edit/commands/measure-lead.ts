import { z } from 'zod';
import { ok, type Result, refuse } from '../../base/result';
import { CableZ, type LeadCable } from '../../document/cable';
import type { Lead } from '../../document/lead';
import { leadOf } from '../../document/lookup';
import { leadName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeLead } from '../change';
import { defineCommand } from '../definition';
import type { Refusal } from '../refusal';
import { withoutStrayRoutes } from '../routes';

/** Says how thick a lead is, how it bends and how long its runs are, or forgets it with the ways of its runs. */
export const measureLead = defineCommand({
  name: 'measure-lead',
  args: z.strictObject({ lead: IdZ, cable: CableZ.nullable() }),
  label: (build, { lead, cable }) => {
    if (cable === null) return `Forget the measures of ${leadName(build, lead)}`;
    const known = leadOf(build, lead)?.cable !== undefined;
    return `${known ? 'Change the measures of' : 'Measure'} ${leadName(build, lead)}`;
  },
  apply: (build, { lead: id, cable }) => {
    const measured = changeLead(build, id, (lead) => {
      const { cable: _, ...plain } = lead;
      if (cable === null) return ok(plain);
      const sound = soundRuns(lead, cable);
      return sound.ok ? ok({ ...plain, cable }) : sound;
    });
    return measured.ok ? ok(withoutStrayRoutes(measured.value, id)) : measured;
  },
});

/** Runs join plugs of the lead, no plug is the far end of two, and none comes back to where it has been. */
function soundRuns({ id, plugs }: Lead, { runs }: LeadCable): Result<null, Refusal> {
  const before = new Map<string, string | undefined>();
  for (const { from, to } of runs) {
    for (const end of [from, to])
      if (end !== undefined && !plugs.some((plug) => plug.id === end))
        return refuse({ code: 'unknown-plug', lead: id, plug: end });
    if (before.has(to)) return refuse({ code: 'run-twice', lead: id, plug: to });
    for (let at = from; at !== undefined; at = before.get(at))
      if (at === to) return refuse({ code: 'run-ring', lead: id, plug: to });
    before.set(to, from);
  }
  return ok(null);
}
