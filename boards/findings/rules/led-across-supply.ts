import type { Volts } from '../../base/units';
import { RUNNING } from '../../circuit/machine-state';
import { brighterGlow, lampOf } from '../../circuit/readings/lamps';
import { isLed } from '../../signals/part-traits';
import { atPart, partOnPins } from '../about';
import { worstSupplied } from '../across';
import type { FindingOf } from '../finding';
import { placementOf } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';

/** Less than this backwards is what two pins on one supply differ by. */
const NO_VOLTS: Volts = 0.5;

/**
 * An LED needs the series resistor that the board puts before its own LED pins, and no bare supply.
 *
 * Good: a drive LED between the drive LED pins.
 * Bad: an LED between a bare +5 V pin and ground: nothing limits its current.
 */
export const ledAcrossSupply: Rule<'led-across-supply'> = {
  id: 'led-across-supply',
  source:
    'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.5: the resistor is on the board (from memory)',
  explains: ['pair-split', 'wrong-pins', 'wrong-function', 'places-exchanged'],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'led-across-supply'>[] => {
      if (!isLed(part.kind) || placementOf(part) !== 'wrong') return [];
      const found = worstSupplied(part, ({ kind, low }) => {
        const below = low.signal.nature;
        return kind !== 'supply-and-signal' || below === 'sink' || below === 'output';
      });
      if (!found) return [];
      const lamp = lampOf(context.circuit, part.lead.id, part.part);
      if (!lamp) return [];
      const { amps, usual } = brighterGlow(lamp, RUNNING);
      const reverseVolts = usual === 'dark' ? lamp.reverseVolts(RUNNING) : 0;
      // Both ends pulled to the same supply: nothing flows, and nothing is across it.
      if (usual === 'dark' && reverseVolts < NO_VOLTS) return [];
      return [
        {
          code: 'led-across-supply',
          severity: 'danger',
          ...atPart(part),
          data: {
            ...partOnPins(part),
            volts: found.volts,
            amps,
            reverseVolts,
          },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};
