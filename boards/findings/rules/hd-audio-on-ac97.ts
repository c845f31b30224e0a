import { RUNNING } from '../../circuit/machine-state';
import { inputVolts } from '../../circuit/readings/inputs';
import { levelOf } from '../../circuit/readings/level';
import type { SignalId } from '../../signals/signals';
import { atPlug, nodeOf, plugOnConnector } from '../about';
import type { FindingOf } from '../finding';
import type { Ac97Variant } from '../finding-data';
import { partsMeeting } from '../job-met';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';
import type { Leg, SeatedPart } from '../seated-part';

/**
 * An HD audio lead belongs on an HD audio header; the AC'97 header has the same shape and key.
 *
 * Good: an HD audio block on an HD audio header.
 * Bad: on AC'97 with +5 V on pin 7, which the sense wire would meet; on the early order with +5 V on pin 4,
 * which the panel joins to ground; on a passive header, where jacks are not detected.
 */
export const hdAudioOnAc97: Rule<'hd-audio-on-ac97'> = {
  id: 'hd-audio-on-ac97',
  source:
    'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.3.3, Table 6 and Figure 4; early order: a board manual',
  explains: ['supply-on-wire', 'places-exchanged', 'wrong-pins', 'wrong-function', 'reversed'],
  check: (context) =>
    context.plugs.flatMap((plug): readonly FindingOf<'hd-audio-on-ac97'>[] => {
      const parts = partsMeeting(plug, ['hd-audio'], ['ac97-audio']);
      if (parts.length === 0) return [];
      const { variant, leg } = variantUnder(parts);
      const volts = leg && inputVolts(context.circuit, [nodeOf(leg)], RUNNING);
      return [
        {
          code: 'hd-audio-on-ac97',
          severity: variant === 'passive' ? 'fault' : 'danger',
          ...atPlug(plug),
          data: {
            ...plugOnConnector(plug),
            variant,
            ...(volts && { volts, ...(variant === 'passive' && { presence: levelOf(volts) }) }),
          },
          remedies: remediesFor(context, plug.ref),
        },
      ];
    }),
};

/** What the lead meets, and the wire whose level tells: the one on the supply, else the presence wire. */
function variantUnder(parts: readonly SeatedPart[]): { readonly variant: Ac97Variant; readonly leg?: Leg } {
  const legs = parts.flatMap((part) => part.legs);
  const wanting = (signal: SignalId) => legs.filter(({ terminal }) => terminal.wants.includes(signal));
  const onSupply = (signal: SignalId) => wanting(signal).find((leg) => leg.signal.nature === 'supply');
  const sense = onSupply('hd-sense-send');
  if (sense) return { variant: 'supply-on-sense', leg: sense };
  const presence = onSupply('hd-presence');
  if (presence) return { variant: 'supply-on-presence', leg: presence };
  const read = wanting('hd-presence').find(({ id }) => id === 'hd-presence');
  return { variant: 'passive', ...(read && { leg: read }) };
}
