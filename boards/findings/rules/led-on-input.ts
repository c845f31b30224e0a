import { atPart, partOnPins } from '../about';
import { across } from '../across';
import type { FindingOf } from '../finding';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import { isLed, pairOf } from '../seated-part';

/**
 * An LED between an input and ground may pull the input low enough to hold it.
 *
 * Good: an LED on LED pins.
 * Bad: an LED on the power switch pins: the machine may start and stop, or not start at all.
 */
export const ledOnInput: Rule<'led-on-input'> = {
  id: 'led-on-input',
  source: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2; pull-ups of its 2.2.5 (from memory)',
  explains: [],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'led-on-input'>[] => {
      const pair = pairOf(part);
      if (!pair || !isLed(part.kind)) return [];
      const found = across(...pair);
      if (found.kind !== 'input-and-ground') return [];
      return [
        {
          code: 'led-on-input',
          severity: 'doubt',
          ...atPart(part),
          data: { ...partOnPins(part), job: found.job },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
