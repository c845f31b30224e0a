import type { Lead } from '../../document/lead';
import { type PlugRef, partsOf } from '../../document/lookup';
import { partKindOf } from '../../signals/part-kinds';
import type { Job } from '../../signals/signal';
import type { CheckContext } from '../context';
import type { FindingOf } from '../finding';
import { hindranceOf } from '../partners';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * A lead that the board has no pins for is good to know about before looking for them. Told once a lead.
 *
 * Good: a lead set aside.
 * Bad: a key lock lead and a board without a key lock; single plugs of an LED of which only the ground would find one.
 */
export const noPlace: Rule<'no-place'> = {
  id: 'no-place',
  source: 'common practice, no source',
  explains: [],
  check: (context) =>
    context.loose.flatMap(({ ref, lead, plug }): readonly FindingOf<'no-place'>[] => {
      if (lead.setAside || plug !== lead.plugs[0]) return [];
      if (context.build.seats.some((seat) => seat.lead === lead.id)) return [];
      if (lead.plugs.some(({ id }) => hasPlace(context, { lead: lead.id, plug: id }))) return [];
      const none = lead.plugs.find(({ id }) => !hasSeat(context, { lead: lead.id, plug: id }));
      const without = { ...ref, plug: none?.id ?? ref.plug };
      const job = jobOf(lead, without.plug);
      if (job === undefined) return [];
      return [
        {
          code: 'no-place',
          severity: 'note',
          leads: [lead.id],
          pins: [],
          data: { plug: without, job },
          remedies: remediesFor(context, without),
        },
      ];
    }),
};

function hasPlace(context: CheckContext, ref: PlugRef): boolean {
  return hasSeat(context, ref) && hindranceOf(context, ref) === undefined;
}

function hasSeat(context: CheckContext, ref: PlugRef): boolean {
  return context.properSeatsWhenBare(ref).length > 0;
}

/** The job of the first part on a plug, else of the lead's first part; none for a cable. */
function jobOf(lead: Lead, plug: string): Job | undefined {
  const own = partsOf(lead, { id: plug });
  const part = lead.parts.find(({ id }) => own.has(id)) ?? lead.parts[0];
  return part && partKindOf(part.kind).job;
}
