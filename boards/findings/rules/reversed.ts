import { atPart, partOnPins } from '../about';
import type { FindingOf, Severity } from '../finding';
import { placementOf } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';

const SEVERITY = {
  dark: 'fault',
  dead: 'fault',
  'other-colour': 'note',
  harm: 'danger',
} as const satisfies Record<string, Severity>;

/**
 * Where polarity matters, the plug has to sit the right way round. A plain switch and a speaker work both ways.
 *
 * Good: the + wire of an LED on the + pin; a power switch either way round.
 * Bad: an LED turned: dark. A buzzer or an electronic switch turned: dead. A two-colour LED: the other colour.
 */
export const reversed: Rule<'reversed'> = {
  id: 'reversed',
  source: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2; polarity from assembly notes',
  explains: ['shifted'],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'reversed'>[] => {
      const effect = part.kind.reversed;
      if (effect === 'nothing' || placementOf(part) !== 'reversed') return [];
      return [
        {
          code: 'reversed',
          severity: SEVERITY[effect],
          ...atPart(part),
          data: { ...partOnPins(part), effect },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
