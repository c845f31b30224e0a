import { BUSY } from '../../circuit/machine-state';
import { brighterGlow, lampOf } from '../../circuit/readings/lamps';
import { atPart, partOnPins } from '../about';
import type { FindingOf } from '../finding';
import { placementOf } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import { pairsOf } from '../seated-part';

/**
 * An LED on its own pins still needs enough current: which resistor a board has is seldom printed.
 *
 * Good: a red LED, lit from 1 mA to 20 mA over all usual resistors.
 * Bad: an LED whose + is fed through a very large resistor: dim or dark on some boards.
 */
export const ledDepends: Rule<'led-depends'> = {
  id: 'led-depends',
  source: 'indicator LED data sheets (read in secondary); resistors of boards: common practice, no source',
  explains: [],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'led-depends'>[] => {
      if (part.kind.job === 'message-led' || placementOf(part) !== 'right') return [];
      // With one wire in the air it is dark on every board, and that is told by the plug.
      if (pairsOf(part).length === 0) return [];
      const lamp = lampOf(context.circuit, part.lead.id, part.part);
      const glow = lamp && brighterGlow(lamp, BUSY);
      if (!glow || glow.least === 'lit') return [];
      return [
        {
          code: 'led-depends',
          severity: 'doubt',
          ...atPart(part),
          data: { ...partOnPins(part), amps: glow.amps, least: glow.least },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
