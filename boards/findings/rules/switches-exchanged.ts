import { atPart, plugRefOf } from '../about';
import type { FindingOf } from '../finding';
import { actsAs } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';

/**
 * The power and the reset switch have to be on their own pins, not on each other's.
 *
 * Good: power switch on pins 6 and 8, reset switch on pins 5 and 7.
 * Bad: the other way round: the two buttons change roles, and nothing is harmed.
 */
export const switchesExchanged: Rule<'switches-exchanged'> = {
  id: 'switches-exchanged',
  source: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2.3 and 2.2.2.4',
  explains: ['places-exchanged', 'wrong-function', 'pair-split', 'shifted'],
  check: (context) => {
    const acting = (job: string, as: string) =>
      context.parts.find((part) => part.kind.job === job && actsAs(part) === as);
    const power = acting('power-switch', 'reset-switch');
    const reset = acting('reset-switch', 'power-switch');
    const [powerLeg] = power?.legs ?? [];
    const [resetLeg] = reset?.legs ?? [];
    if (!power || !reset || !powerLeg || !resetLeg) return [];
    const found: FindingOf<'switches-exchanged'> = {
      code: 'switches-exchanged',
      severity: 'fault',
      leads: [...new Set([power.lead.id, reset.lead.id])],
      pins: [...atPart(power).pins, ...atPart(reset).pins],
      data: { power: plugRefOf(powerLeg), reset: plugRefOf(resetLeg) },
      remedies: remediesForPart(context, power),
    };
    return [found];
  },
};
