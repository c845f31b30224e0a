import { atPart, partOnPins } from '../about';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';
import { takeWireOutText } from '../words/remedies';

/**
 * A ground or shield wire must not lie on an over-current input: it would report a short that is none.
 *
 * Good: a USB block without a wire in hole 10.
 * Bad: a block with a shield wire in hole 10 on a board whose pin 10 watches for over-current.
 */
export const groundOnOverCurrent: Rule<'ground-on-over-current'> = {
  id: 'ground-on-over-current',
  source: "common practice, no source: a case maker's reply in an owners' thread",
  explains: ['wrong-pins', 'wrong-function'],
  check: ({ parts }) =>
    parts.flatMap((part): readonly FindingOf<'ground-on-over-current'>[] => {
      const met = part.legs.filter(
        ({ id, terminal }) => id === 'usb-over-current' && terminal.wants.includes('ground'),
      );
      if (met.length === 0) return [];
      return [
        {
          code: 'ground-on-over-current',
          severity: 'fault',
          ...atPart(part),
          data: partOnPins(part, met),
          remedies: met.map(({ joint }) => ({ text: takeWireOutText(joint.hole) })),
        },
      ];
    }),
};
