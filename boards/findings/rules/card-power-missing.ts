import { unitWith } from '../../document/lookup';
import { inletsOf, isFed } from '../fed-pins';
import type { FindingOf } from '../finding';
import { feedRemedies } from '../power-remedies';
import type { Rule } from '../rule';

/**
 * A card needs a cable on every power socket that it has.
 *
 * Good: both sockets fed.
 * Bad: one of two left: the card sees it on its sense contacts, and stays dark or slows down.
 */
export const cardPowerMissing: Rule<'card-power-missing'> = {
  id: 'card-power-missing',
  source: 'ATX 3.0 power supply design guide (336521), Tables 5-4 to 5-6',
  explains: ['rail-left-off'],
  check: (context) => {
    const inlets = inletsOf(context).filter(({ job }) => job === 'card-power');
    return inlets
      .filter((inlet) => !isFed(inlet))
      .map(({ connector, plugs, rails }): FindingOf<'card-power-missing'> => {
        const unit = unitWith(context.build, connector.id);
        const sockets = inlets.filter((other) => unitWith(context.build, other.connector.id) === unit);
        return {
          code: 'card-power-missing',
          severity: 'fault',
          leads: plugs.map(({ lead }) => lead.id),
          pins: rails.map(({ pin }) => pin),
          data: {
            connector: connector.id,
            plugged: plugs.length > 0,
            fed: sockets.filter(isFed).length,
            sockets: sockets.length,
          },
          remedies: feedRemedies(context, connector),
        };
      });
  },
};
