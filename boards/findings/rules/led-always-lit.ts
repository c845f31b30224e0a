import { RUNNING } from '../../circuit/machine-state';
import { brighterGlow, lampOf } from '../../circuit/readings/lamps';
import type { PartKind } from '../../signals/part-kind';
import { isLed } from '../../signals/part-traits';
import { signalOf } from '../../signals/signals';
import { atPart, partOnPins } from '../about';
import { across } from '../across';
import type { FindingOf } from '../finding';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import { type Leg, pairsOf } from '../seated-part';

/**
 * An LED has to return to the pin that switches it, not to plain ground, or it shows nothing by being lit.
 *
 * Good: a power LED on a header whose power LED − is ground, since the + is switched there.
 * Bad: a drive LED from its + to ground: lit all the time, with no activity shown.
 */
export const ledAlwaysLit: Rule<'led-always-lit'> = {
  id: 'led-always-lit',
  source: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2; worked out from its pin order',
  explains: ['pair-split', 'wrong-pins', 'wrong-function', 'places-exchanged'],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'led-always-lit'>[] => {
      if (!isLed(part.kind) || !pairsOf(part).some((pair) => isAlwaysOn(part.kind, pair))) return [];
      const lamp = lampOf(context.circuit, part.lead.id, part.part);
      const glow = lamp && brighterGlow(lamp, RUNNING);
      if (!glow || glow.usual === 'dark') return [];
      return [
        {
          code: 'led-always-lit',
          severity: 'fault',
          ...atPart(part),
          data: { ...partOnPins(part), amps: glow.amps },
          remedies: remediesForPart(context, part),
        },
      ];
    }),
};

/** From a feed to a ground that is not its own return. */
function isAlwaysOn(kind: PartKind, pair: readonly [Leg, Leg]): boolean {
  const found = across(...pair);
  if (found.kind !== 'feed-and-ground') return false;
  const low = pair[0] === found.high ? pair[1] : pair[0];
  return !isOwnReturn(kind, found.high, low);
}

/** Ground is an LED's own return where it wants one, and the header of its feed has no switched pin for it. */
function isOwnReturn(kind: PartKind, high: Leg, low: Leg): boolean {
  const wanted = kind.terminals.flatMap(({ wants }) => wants);
  const switched = high.joint.connector.pins.some(
    ({ signal }) => signal !== undefined && wanted.includes(signal) && signalOf(signal).nature === 'sink',
  );
  return wanted.includes(low.id) && !switched;
}
