import type { FindingOf } from '../finding';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';
import { tooWideFor } from '../too-wide';

/**
 * An LED plug whose contacts stand further apart than the board's pins fits nowhere as it is.
 *
 * Good: a three-wide power LED plug with the three-wide header of the board still free.
 * Bad: the same plug, and only two neighbouring pins for it.
 */
export const plugTooWide: Rule<'plug-too-wide'> = {
  id: 'plug-too-wide',
  source: 'common practice, no source; the three-wide LED header: two board product specifications',
  explains: ['place-taken', 'no-place'],
  check: (context) =>
    context.loose.flatMap(({ ref, lead }): readonly FindingOf<'plug-too-wide'>[] => {
      if (lead.setAside || context.properSeats(ref).length > 0) return [];
      const tooWide = tooWideFor(context, ref);
      if (!tooWide) return [];
      const { part, connector, pins } = tooWide;
      return [
        {
          code: 'plug-too-wide',
          severity: 'fault',
          leads: [lead.id],
          pins: pins.map((pin) => ({ connector: connector.id, pin })),
          data: { plug: ref, connector: connector.id, part: part.id },
          remedies: remediesFor(context, ref),
        },
      ];
    }),
};
