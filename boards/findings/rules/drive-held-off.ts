import { RUNNING } from '../../circuit/machine-state';
import { arrivalAt } from '../../circuit/readings/arrivals';
import { plugOnConnector } from '../about';
import type { CheckedPlug } from '../context';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';
import { fourPinAdapterText } from '../words/remedies';

/** From this on the pin reads as high: 2.1 V, as disks state it (from memory). */
const DISABLED_VOLTS = 2.1;

/**
 * A drive with power disable stays off while +3.3 V is on its pin 3.
 *
 * Good: a cable or an adapter without the +3.3 V wire.
 * Bad: a supply of before, which has +3.3 V there: the drive never turns. On a drive that may be of either
 * kind it is a note.
 */
export const driveHeldOff: Rule<'drive-held-off'> = {
  id: 'drive-held-off',
  source: 'Serial ATA 3.3 power disable, from an encyclopaedia',
  explains: ['pins-joined'],
  check: ({ build, plugs }) =>
    plugs.flatMap((plug): readonly FindingOf<'drive-held-off'>[] =>
      disablePins(plug).flatMap(({ pin, certain }) => {
        const ref = { connector: plug.connector.id, pin };
        const arrives = arrivalAt(build, ref).volts(RUNNING);
        if (arrives === undefined || arrives.usual < DISABLED_VOLTS) return [];
        return [
          {
            code: 'drive-held-off',
            severity: certain ? 'fault' : 'note',
            leads: [plug.lead.id],
            pins: [ref],
            data: { ...plugOnConnector(plug), certain, arrives },
            remedies: [{ text: fourPinAdapterText() }],
          },
        ];
      }),
    ),
};

function disablePins({ joints }: CheckedPlug) {
  return joints.flatMap(({ pin }) => {
    if (pin?.signal === 'drive-power-disable') return [{ pin: pin.pin, certain: true }];
    const perhaps = pin?.alternatives?.some(({ signal }) => signal === 'drive-power-disable');
    return pin && perhaps ? [{ pin: pin.pin, certain: false }] : [];
  });
}
