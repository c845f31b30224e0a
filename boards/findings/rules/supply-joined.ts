import { partLoad } from '../../circuit/readings/part-load';
import { isLed, isSwitch } from '../../signals/part-traits';
import { atPart, partOnPins } from '../about';
import { worstSupplied } from '../across';
import type { FindingOf } from '../finding';
import { placementOf } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import type { SeatedPart } from '../seated-part';
import { tripAt } from '../trip';
import { circuitWhenClosed } from '../when-closed';

/**
 * A part with two wires must not join a supply to ground, to another supply or to a signal.
 *
 * Good: a power switch between its input and ground.
 * Bad: a switch between +5 V on pin 9 and ground: a press would short the supply, which has no fuse of its own.
 */
export const supplyJoined: Rule<'supply-joined'> = {
  id: 'supply-joined',
  source:
    'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.1: the +5 V of the panel header is not protected',
  explains: ['pair-split', 'wrong-pins', 'wrong-function', 'places-exchanged', 'panel-on-serial'],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'supply-joined'>[] => {
      if (placementOf(part) !== 'wrong') return [];
      const found = worstSupplied(part, ({ kind, low }) => wouldHarm(part, kind, low.signal.nature));
      if (!found) return [];
      const circuit = circuitWhenClosed(context, part);
      return [
        {
          code: 'supply-joined',
          severity: 'danger',
          ...atPart(part),
          data: {
            ...partOnPins(part),
            volts: found.volts,
            other: found.low.id,
            ...partLoad(circuit, part.lead, part.part.id),
            ...tripAt({ circuit }, found.high),
          },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};

/** What lets any current through joins a supply to a signal; only what lets all of it through shorts it. */
function wouldHarm({ kind }: SeatedPart, between: string, low: string): boolean {
  if (between === 'supply-and-signal' && !isLed(kind)) return true;
  if (isLed(kind)) return between === 'supply-and-signal' && low !== 'sink' && low !== 'output';
  return isSwitch(kind) || kind.path === 'low-resistance';
}
