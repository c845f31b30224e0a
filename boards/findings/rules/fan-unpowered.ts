import { atPart, partOnPins } from '../about';
import type { FindingOf } from '../finding';
import { jobsUnder, wrongLegs } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';

/**
 * A fan turns only with its ground wire on ground and its supply wire on +12 V.
 *
 * Good: ground on pin 1 and supply on pin 2 of a fan header.
 * Bad: the plug one pin short of that: the supply wire on ground.
 */
export const fanUnpowered: Rule<'fan-unpowered'> = {
  id: 'fan-unpowered',
  source: '4-Wire PWM Controlled Fans Specification rev 1.3, Table 1',
  explains: ['wrong-pins', 'wrong-function', 'reversed'],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'fan-unpowered'>[] => {
      if (part.kind.job !== 'fan' || !jobsUnder(part).includes('fan')) return [];
      const astray = wrongLegs(part).filter(({ terminal }) => terminal.spare !== true);
      if (astray.length === 0) return [];
      return [
        {
          code: 'fan-unpowered',
          severity: 'fault',
          ...atPart(part),
          data: partOnPins(part, astray),
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
