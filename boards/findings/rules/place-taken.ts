import type { FindingOf } from '../finding';
import { occupantsOf, remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * A lead that is left over because another one sits in its place should be decided about.
 *
 * Good: the second plug of a twin lead, tied back while the first is seated.
 * Bad: a second USB lead for the one USB header; a power LED whose pins another lead covers.
 */
export const placeTaken: Rule<'place-taken'> = {
  id: 'place-taken',
  source: 'common practice, no source',
  explains: [],
  check: (context) =>
    context.loose.flatMap(({ ref, lead }): readonly FindingOf<'place-taken'>[] => {
      if (lead.setAside || context.properSeats(ref).length > 0) return [];
      const by = occupantsOf(context, ref);
      if (by.length === 0 || by.every((other) => other.lead === lead.id)) return [];
      return [
        {
          code: 'place-taken',
          severity: 'doubt',
          leads: [lead.id],
          pins: [],
          data: { plug: ref, by },
          remedies: remediesFor(context, ref),
        },
      ];
    }),
};
