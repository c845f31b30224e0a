import { atPart, partOnPins } from '../about';
import { astrayOf } from '../astray';
import type { FindingOf } from '../finding';
import { legsAtFault, placementOf } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';

/**
 * On the pins of its own function, a wire still has to lie on the right one of them.
 *
 * Good: D− on D− and D+ on D+.
 * Bad: single plugs of a USB port with D− and D+ exchanged; a speaker with one wire on the unused pin.
 */
export const wrongPins: Rule<'wrong-pins'> = {
  id: 'wrong-pins',
  source: 'pin orders of the published headers, each named where its pins are listed',
  explains: [],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'wrong-pins'>[] => {
      if (astrayOf(part)?.kind !== 'wrong-pins' || placementOf(part) !== 'wrong') return [];
      return [
        {
          code: 'wrong-pins',
          severity: 'fault',
          ...atPart(part),
          data: partOnPins(part, legsAtFault(part)),
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
