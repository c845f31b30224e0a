import type { Volts } from '../../base/units';
import { BUSY } from '../../circuit/machine-state';
import { lampOf } from '../../circuit/readings/lamps';
import { atPart, partOnPins } from '../about';
import type { CheckContext } from '../context';
import type { FindingOf, Severity } from '../finding';
import { placementOf } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import type { SeatedPart } from '../seated-part';

function reverseVolts({ circuit }: CheckContext, { lead, part }: SeatedPart): Volts {
  return lampOf(circuit, lead.id, part)?.reverseVolts(BUSY) ?? 0;
}

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
          data: {
            ...partOnPins(part),
            effect,
            reverseVolts: effect === 'dark' ? reverseVolts(context, part) : 0,
          },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
