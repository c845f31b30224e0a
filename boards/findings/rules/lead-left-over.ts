import { pinsUnderSeat } from '../about';
import type { FindingOf } from '../finding';
import { hindranceOf } from '../partners';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * A lead should not be left over while its place on the board is free.
 *
 * Good: every lead seated, or set aside on purpose. One of two single plugs, as long as the other lies wrong.
 * Bad: the reset lead beside the board, with the reset pins free.
 */
export const leadLeftOver: Rule<'lead-left-over'> = {
  id: 'lead-left-over',
  source: 'common practice, no source',
  explains: [],
  check: (context) =>
    context.loose.flatMap(({ ref, lead }): readonly FindingOf<'lead-left-over'>[] => {
      const [place] = lead.setAside ? [] : context.properSeats(ref);
      if (!place || hindranceOf(context, ref)) return [];
      return [
        {
          code: 'lead-left-over',
          severity: 'doubt',
          leads: [lead.id],
          pins: pinsUnderSeat(context.build, place),
          data: { plug: ref, connector: place.connector },
          remedies: remediesFor(context, ref),
        },
      ];
    }),
};
