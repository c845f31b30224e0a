import { atPart, partOnPins } from '../about';
import { astrayOf } from '../astray';
import type { FindingOf } from '../finding';
import { actsAs } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';

/**
 * A lead has to sit on the pins of its own function.
 *
 * Good: a reset switch on the reset pins; a power switch on its input and any ground.
 * Bad: a reset switch on the power switch pins: its button would start the machine. A cap away from its
 * jumper is a doubt only: boards have many jumpers.
 */
export const wrongFunction: Rule<'wrong-function'> = {
  id: 'wrong-function',
  source:
    'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2, for panel leads; else common practice, no source',
  explains: [],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'wrong-function'>[] => {
      if (astrayOf(part)?.kind !== 'wrong-function') return [];
      const acts = actsAs(part);
      return [
        {
          code: 'wrong-function',
          severity: part.kind.job === 'clear-settings' ? 'doubt' : 'fault',
          ...atPart(part),
          data: { ...partOnPins(part), ...(acts && { acts }) },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
