import { atPart, plugOnConnector } from '../about';
import type { CheckedPlug } from '../context';
import type { FindingOf } from '../finding';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * Every contact with a wire that matters has to meet a pin.
 *
 * Good: a four-wide speaker plug on four pins.
 * Bad: a switch plug with one contact over the missing pin 10, or past the edge of the header.
 */
export const contactOffPins: Rule<'contact-off-pins'> = {
  id: 'contact-off-pins',
  source:
    'Front Panel I/O Connectivity Design Guide v1.3 (2005), Figure 10: a key is a position without a pin',
  explains: ['overhang', 'pair-split', 'wrong-pins', 'wrong-function'],
  check: (context) =>
    context.plugs.flatMap((plug): readonly FindingOf<'contact-off-pins'>[] => {
      const off = jointsOffPins(plug);
      if (off.length === 0) return [];
      const parts = plug.parts.filter(({ part }) => off.some((joint) => joint.part === part));
      const contacts = new Map(
        off.map(({ hole, landing }) => [hole, { hole, ...(landing.pin && { pin: landing.pin.pin }) }]),
      );
      return [
        {
          code: 'contact-off-pins',
          severity: 'fault',
          leads: [plug.lead.id],
          pins: parts.flatMap((part) => atPart(part).pins),
          data: { ...plugOnConnector(plug), contacts: [...contacts.values()] },
          remedies: remediesFor(context, plug.ref),
        },
      ];
    }),
};

function jointsOffPins({ joints }: CheckedPlug) {
  return joints.filter(({ pin, terminal }) => pin === undefined && terminal?.spare !== true);
}
