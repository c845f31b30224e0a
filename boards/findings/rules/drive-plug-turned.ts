import { atPlug, plugOnConnector } from '../about';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';
import { turnBackText } from '../words/remedies';

const PERIPHERAL = 'peripheral-power';

/**
 * A four-pin drive plug has to go in with its slanted corners on the slanted side; worn ones let it turn round.
 *
 * Good: its rib on the guide.
 * Bad: pressed in the other way round: +12 V on the drive's +5 V, and +5 V on its +12 V.
 */
export const drivePlugTurned: Rule<'drive-plug-turned'> = {
  id: 'drive-plug-turned',
  source: 'order of the four pins: +12 V, ground, ground, +5 V (from memory)',
  explains: ['seat-impossible', 'supply-mismatch', 'pins-joined'],
  check: ({ plugs }) =>
    plugs.flatMap((plug): readonly FindingOf<'drive-plug-turned'>[] => {
      if (plug.plug.family !== PERIPHERAL || plug.connector.family !== PERIPHERAL) return [];
      if (!plug.fit.refusals.some(({ code }) => code === 'guide')) return [];
      return [
        {
          code: 'drive-plug-turned',
          severity: 'danger',
          ...atPlug(plug),
          data: plugOnConnector(plug),
          remedies: [{ text: turnBackText() }],
        },
      ];
    }),
};
