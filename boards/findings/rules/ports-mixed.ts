import { portsOf } from '../../fit/match';
import { atPart, partOnPins } from '../about';
import type { FindingOf } from '../finding';
import { placementOf } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';

/**
 * All wires of one port have to lie on the pins of one port of the board.
 *
 * Good: +5 V, D−, D+ and ground of a port on one row of a USB header.
 * Bad: D− in the one row and D+ in the other: both ports would be dead.
 */
export const portsMixed: Rule<'ports-mixed'> = {
  id: 'ports-mixed',
  source: 'USB 2.0 2x5 header as listed in board product guides: one row a port',
  explains: [],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'ports-mixed'>[] => {
      if (placementOf(part) !== 'ports-mixed') return [];
      return [
        {
          code: 'ports-mixed',
          severity: 'fault',
          ...atPart(part),
          data: { ...partOnPins(part), channels: [...portsOf(part.legs)] },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
