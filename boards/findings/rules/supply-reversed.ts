import { signalOf } from '../../signals/signals';
import { atPart, partOnPins } from '../about';
import type { FindingOf } from '../finding';
import { wrongLegs } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import type { Leg } from '../seated-part';

/**
 * The supply and the ground wire of a port must not lie in each other's place.
 *
 * Good: a single-row USB plug with its +5 V end on pin 1.
 * Bad: the same plug turned end for end: whatever is plugged into the port would be fed backwards.
 */
export const supplyReversed: Rule<'supply-reversed'> = {
  id: 'supply-reversed',
  source: 'USB 2.0 2x5 header as listed in board product guides; worked out from its pin order',
  explains: [
    'supply-on-wire',
    'fan-supply-on-signal',
    'fan-unpowered',
    'reversed',
    'wrong-pins',
    'wrong-function',
    'ports-mixed',
  ],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'supply-reversed'>[] => {
      if (part.kind.terminals.length <= 2) return [];
      const wrong = wrongLegs(part);
      const onSupply = wrong.find((leg) => leg.signal.nature === 'supply' && wantsNature(leg, 'ground'));
      const onGround = wrong.find((leg) => leg.signal.nature === 'ground' && wantsNature(leg, 'supply'));
      if (!onSupply || !onGround) return [];
      return [
        {
          code: 'supply-reversed',
          severity: 'danger',
          ...atPart(part),
          data: { ...partOnPins(part, [onSupply, onGround]), volts: onSupply.signal.volts ?? 0 },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};

function wantsNature({ terminal }: Leg, nature: 'ground' | 'supply'): boolean {
  return terminal.wants.some((id) => signalOf(id).nature === nature);
}
