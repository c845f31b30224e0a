import type { PlugRef } from '../../document/lookup';
import { partKindOf } from '../../signals/part-kinds';
import type { Job } from '../../signals/signal';
import type { CheckContext, LoosePlug } from '../context';
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
    context.loose.flatMap((loose): readonly FindingOf<'no-place'>[] => {
      const { ref, lead, plug } = loose;
      const job = jobOf(loose);
      if (lead.setAside || job === undefined || plug !== lead.plugs[0]) return [];
      if (context.build.seats.some((seat) => seat.lead === lead.id)) return [];
      if (lead.plugs.some(({ id }) => hasPlace(context, { lead: lead.id, plug: id }))) return [];
      return [
        {
          code: 'no-place',
          severity: 'note',
          leads: [lead.id],
          pins: [],
          data: { plug: ref, job },
          remedies: remediesFor(context, ref),
        },
      ];
    }),
};

function hasPlace(context: CheckContext, ref: PlugRef): boolean {
  return context.properSeatsWhenBare(ref).length > 0 && hindranceOf(context, ref) === undefined;
}

/** The job of the lead's first part; none for a cable. */
function jobOf({ lead }: LoosePlug): Job | undefined {
  const [part] = lead.parts;
  return part && partKindOf(part.kind).job;
}
