import { unitWith } from '../../document/lookup';
import { inletsOf, isFed } from '../fed-pins';
import type { FindingOf } from '../finding';
import { feedRemedies } from '../power-remedies';
import type { Rule } from '../rule';

/**
 * A drive needs power beside its data cable.
 *
 * Good: a SATA power plug from the supply.
 * Bad: only the data cable, or a power cable whose other end lies loose: the board would not find the drive.
 */
export const drivePowerMissing: Rule<'drive-power-missing'> = {
  id: 'drive-power-missing',
  source: 'Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7',
  explains: ['rail-left-off'],
  check: (context) =>
    inletsOf(context).flatMap((inlet): readonly FindingOf<'drive-power-missing'>[] => {
      const { connector, plugs, rails, job } = inlet;
      if (job !== 'drive-power' || unitWith(context.build, connector.id)?.kind !== 'drive') return [];
      if (isFed(inlet)) return [];
      return [
        {
          code: 'drive-power-missing',
          severity: 'fault',
          leads: plugs.map(({ lead }) => lead.id),
          pins: rails.map(({ pin }) => pin),
          data: { connector: connector.id, plugged: plugs.length > 0 },
          remedies: feedRemedies(context, connector),
        },
      ];
    }),
};
