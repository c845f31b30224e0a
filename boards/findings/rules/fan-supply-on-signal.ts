import { atPart, partOnPins } from '../about';
import type { FindingOf } from '../finding';
import { wrongLegs } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';

/**
 * The supply of a fan header must meet only the supply wire of the fan.
 *
 * Good: a three-wire fan on pins 1 to 3 of a four-pin header.
 * Bad: the plug one pin too far: +12 V would reach the ground, the tach or the PWM wire, and through the fan
 * a signal pin of the board.
 */
export const fanSupplyOnSignal: Rule<'fan-supply-on-signal'> = {
  id: 'fan-supply-on-signal',
  source: '4-Wire PWM Controlled Fans Specification rev 1.3, Table 1 and 2.1.4: PWM stands 5.25 V at most',
  explains: ['fan-unpowered', 'wrong-pins', 'wrong-function', 'reversed'],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'fan-supply-on-signal'>[] => {
      if (part.kind.job !== 'fan') return [];
      const met = wrongLegs(part).filter(
        ({ signal, terminal }) => signal.nature === 'supply' && !terminal.wants.includes('fan-supply'),
      );
      if (met.length === 0) return [];
      return [
        {
          code: 'fan-supply-on-signal',
          severity: 'danger',
          ...atPart(part),
          data: { ...partOnPins(part, met), volts: Math.max(...met.map(({ signal }) => signal.volts ?? 0)) },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
