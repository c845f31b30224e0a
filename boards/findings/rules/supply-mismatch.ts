import { plugOnConnector } from '../about';
import { type FedPin, fedPinsUnder, isHarmful, isWronglyFed } from '../fed-pins';
import type { FindingOf } from '../finding';
import { cableRemedy } from '../power-remedies';
import type { Rule } from '../rule';

/**
 * Every pin that takes power has to get the rail that it is made for: each wire is followed from the outlet.
 *
 * Good: a modular cable on the supply that it came with.
 * Bad: the same cable on the like socket of another supply: +12 V would arrive where the drive has +5 V.
 */
export const supplyMismatch: Rule<'supply-mismatch'> = {
  id: 'supply-mismatch',
  source:
    'pin tables of the power connectors, each named where its pins are listed; rails and their tolerances: microATX specification v1.2, Table 7',
  explains: ['pins-joined', 'rail-left-off', 'drive-held-off'],
  check: (context) =>
    context.plugs.flatMap((plug): readonly FindingOf<'supply-mismatch'>[] => {
      const wrong = fedPinsUnder(context, plug).filter(isWronglyFed);
      if (wrong.length === 0) return [];
      const { lead, ref } = plug;
      const arrives = worst(wrong);
      return [
        {
          code: 'supply-mismatch',
          severity: wrong.some(isHarmful) ? 'danger' : 'fault',
          leads: [...new Set([lead.id, ...wrong.flatMap(({ leads }) => leads)])],
          pins: wrong.map(({ pin }) => pin),
          data: {
            ...plugOnConnector(plug),
            wrong,
            forced: plug.fit.refusals.length > 0,
            ...(arrives && { arrives }),
          },
          remedies: cableRemedy(context, ref),
        },
      ];
    }),
};

function worst(wrong: readonly FedPin[]) {
  const harmful = wrong.filter(isHarmful);
  return (harmful.length > 0 ? harmful : wrong)
    .flatMap(({ arrives }) => arrives ?? [])
    .toSorted((a, b) => Math.abs(b.usual) - Math.abs(a.usual))[0];
}
