import { atPart, partOnPins } from '../about';
import { across } from '../across';
import type { FindingOf } from '../finding';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import { isLed, type Leg, pairOf } from '../seated-part';

/**
 * An LED has to return to the pin that switches it, not to plain ground, or it shows nothing by being lit.
 *
 * Good: a power LED on a header whose power LED − is ground, since the + is switched there.
 * Bad: a drive LED from its + to ground: lit all the time, with no activity shown.
 */
export const ledAlwaysLit: Rule<'led-always-lit'> = {
  id: 'led-always-lit',
  source: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2; worked out from its pin order',
  explains: ['pair-split', 'wrong-pins', 'wrong-function', 'places-exchanged'],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'led-always-lit'>[] => {
      const pair = pairOf(part);
      if (!pair || !isLed(part.kind)) return [];
      const found = across(...pair);
      if (found.kind !== 'feed-and-ground' || found.high !== pair[0] || isOwnReturn(pair[1])) return [];
      return [
        {
          code: 'led-always-lit',
          severity: 'fault',
          ...atPart(part),
          data: partOnPins(part),
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};

/** Ground is an LED's own return where it wants one and the header has no switched pin for it. */
function isOwnReturn({ joint, id, terminal }: Leg): boolean {
  const switched = joint.connector.pins.some(
    ({ signal }) => signal !== undefined && signal !== 'ground' && terminal.wants.includes(signal),
  );
  return terminal.wants.includes(id) && !switched;
}
