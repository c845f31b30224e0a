import { signalOf } from '../../signals/signals';
import { atPart, partOnPins } from '../about';
import type { FindingOf } from '../finding';
import { wrongLegs } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import type { Leg } from '../seated-part';

/**
 * A supply pin must meet only a wire that wants such a supply.
 *
 * Good: USB +5 V on the +5 V wire of a port.
 * Bad: a single-row USB plug one column too far: +5 V would reach the D− wire.
 */
export const supplyOnWire: Rule<'supply-on-wire'> = {
  id: 'supply-on-wire',
  source: 'USB 2.0 2x5 header as listed in board product guides; worked out from its pin order',
  explains: [
    'wrong-pins',
    'wrong-function',
    'ports-mixed',
    'places-exchanged',
    'ac97-on-hd-audio',
    'reversed',
  ],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'supply-on-wire'>[] => {
      const { kind } = part;
      if (kind.terminals.length <= 2 || kind.job === 'fan') return [];
      const met = wrongLegs(part).filter(getsTooMuch);
      if (met.length === 0) return [];
      return [
        {
          code: 'supply-on-wire',
          severity: 'danger',
          ...atPart(part),
          data: { ...partOnPins(part, met), volts: Math.max(...met.map(({ signal }) => signal.volts ?? 0)) },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};

/** On a supply, and made for none or for a lower one. */
function getsTooMuch({ signal, terminal }: Leg): boolean {
  if (signal.nature !== 'supply') return false;
  const volts = signal.volts ?? 0;
  const wanted = terminal.wants.map(signalOf).filter(({ nature }) => nature === 'supply');
  return !wanted.some((supply) => volts >= 0 && volts <= (supply.volts ?? 0));
}
