import type { Span } from '../../circuit/corner';
import { RUNNING } from '../../circuit/machine-state';
import { portSupplyOf } from '../../circuit/readings/ports';
import { signalOf } from '../../signals/signals';
import { atPart, partOnPins } from '../about';
import type { CheckContext } from '../context';
import type { FindingOf } from '../finding';
import { wrongLegs } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import type { Leg, SeatedPart } from '../seated-part';
import { tripAt } from '../trip';

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
          data: {
            ...partOnPins(part, [onSupply, onGround]),
            volts: onSupply.signal.volts ?? 0,
            arrives: arriving(context, part) ?? NOTHING,
            ...tripAt(context, onSupply),
          },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};

const NOTHING: Span = { usual: 0, low: 0, high: 0 };

function arriving({ circuit }: CheckContext, { lead, part }: SeatedPart): Span | undefined {
  return portSupplyOf(circuit, lead.id, part)?.volts(RUNNING);
}

function wantsNature({ terminal }: Leg, nature: 'ground' | 'supply'): boolean {
  return terminal.wants.some((id) => signalOf(id).nature === nature);
}
