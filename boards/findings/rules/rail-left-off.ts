import { grouped } from '../../base/grouped';
import { inletsOf, isFed } from '../fed-pins';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';

/**
 * A device that is fed should get every rail that it has pins for.
 *
 * Good: a SATA cable with five wires.
 * Bad: an adapter from a four-pin plug, which has no +3.3 V to give: a note, since few drives use it. Without +5 V
 * or +12 V: a fault.
 */
export const railLeftOff: Rule<'rail-left-off'> = {
  id: 'rail-left-off',
  source: 'Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7',
  explains: [],
  check: (context) =>
    inletsOf(context).flatMap((inlet): readonly FindingOf<'rail-left-off'>[] => {
      if (!isFed(inlet)) return [];
      const bySignal = grouped(inlet.rails, ({ signal }) => signal);
      const bare = [...bySignal].filter(([, pins]) => pins.every(({ fed }) => fed === 'nothing'));
      return bare.map(([signal, pins]) => ({
        code: 'rail-left-off',
        severity: SPARE.has(signal) ? 'note' : 'fault',
        leads: [...new Set(inlet.plugs.map(({ lead }) => lead.id))],
        pins: pins.map(({ pin }) => pin),
        data: { connector: inlet.connector.id, signal },
        remedies: [],
      }));
    }),
};

/** Rails that devices of today seldom draw from: common practice, no source. */
const SPARE: ReadonlySet<string> = new Set(['supply-3v3', 'supply-minus-12v', 'supply-minus-5v']);
