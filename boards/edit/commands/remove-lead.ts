import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { leadOf } from '../../document/lookup';
import { leadName } from '../../document/names';
import { IdZ } from '../../document/text';
import { withoutChoices } from '../choices';
import { defineCommand } from '../definition';
import { withoutStrayRoutes } from '../routes';

/** Removes a lead, takes its plugs off the board and its cable out of the tray, and forgets what was chosen of it. */
export const removeLead = defineCommand({
  name: 'remove-lead',
  args: z.strictObject({ lead: IdZ }),
  label: (build, { lead }) => `Remove ${leadName(build, lead)}`,
  apply: (build, { lead: id }) => {
    if (leadOf(build, id) === undefined) return refuse({ code: 'unknown-lead', lead: id });
    const without = {
      ...build,
      case: { ...build.case, leads: build.case.leads.filter((lead) => lead.id !== id) },
      extras: build.extras.filter((lead) => lead.id !== id),
      seats: build.seats.filter((seat) => seat.lead !== id),
    };
    const unchosen = withoutChoices(without, ({ kind, of, on }) =>
      kind === 'header' ? of === id : kind === 'branch' && on === id,
    );
    return ok(withoutStrayRoutes(unchosen, id));
  },
});
