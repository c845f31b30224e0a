import { atPart, partOnPins } from '../about';
import { astrayOf } from '../astray';
import type { FindingOf } from '../finding';
import { actsAs } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';

/**
 * The two wires of a switch, an LED or a speaker belong on one pair of pins, not on halves of two pairs.
 *
 * Good: a drive LED with both wires on the drive LED pins.
 * Bad: its + on the drive LED pin and its − on the reset pin. An LED from another + to its own − still works,
 * but takes that other lead's pin.
 */
export const pairSplit: Rule<'pair-split'> = {
  id: 'pair-split',
  source: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2; worked out from its pin order',
  explains: [],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'pair-split'>[] => {
      const astray = astrayOf(part);
      if (astray?.kind !== 'pair-split') return [];
      const acts = actsAs(part);
      return [
        {
          code: 'pair-split',
          severity: acts === part.kind.job ? 'doubt' : 'fault',
          ...atPart(part),
          data: { ...partOnPins(part), jobs: astray.jobs, ...(acts && { acts }) },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
