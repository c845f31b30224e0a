import { atPart, partOnPins } from '../about';
import { across } from '../across';
import type { FindingOf } from '../finding';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import { pairOf } from '../seated-part';

/**
 * Nothing of low resistance may lie between an input and ground: it holds the input, like a stuck button.
 *
 * Good: a speaker between the speaker pins.
 * Bad: a speaker on the power switch pins: the machine would start by itself and go off after some seconds.
 */
export const inputHeld: Rule<'input-held'> = {
  id: 'input-held',
  source: 'ACPI 6.0, 4.8.2.2.1: power held for four seconds or more forces the machine off',
  explains: ['pair-split', 'wrong-pins', 'wrong-function', 'places-exchanged'],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'input-held'>[] => {
      const pair = pairOf(part);
      if (!pair || part.kind.path !== 'low-resistance') return [];
      const found = across(...pair);
      if (found.kind !== 'input-and-ground' || found.job === 'clear-settings') return [];
      return [
        {
          code: 'input-held',
          severity: 'fault',
          ...atPart(part),
          data: { ...partOnPins(part), job: found.job },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
