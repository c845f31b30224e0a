import { gridIndex } from '../../document/numbering';
import { type Inlet, inletsOf, isFed } from '../fed-pins';
import type { FindingOf } from '../finding';
import { feedRemedies } from '../power-remedies';
import type { Rule } from '../rule';

/**
 * Where a supply is in the build, the board's main connector needs its plug, and all of its pins covered.
 *
 * Good: a plug of 24 on 24 pins.
 * Bad: no plug: nothing starts. The four extra pins left off: less copper for every rail than the board was made for.
 */
export const mainPowerMissing: Rule<'main-power-missing'> = {
  id: 'main-power-missing',
  source: 'microATX specification v1.2, Figure 8',
  explains: ['rail-left-off'],
  check: (context) =>
    inletsOf(context).flatMap((inlet): readonly FindingOf<'main-power-missing'>[] => {
      const { connector, job, plugs } = inlet;
      if (job !== 'main-power') return [];
      const fed = isFed(inlet);
      const left = bareLabels(inlet);
      if (fed && left.length === 0) return [];
      return [
        {
          code: 'main-power-missing',
          severity: fed ? 'doubt' : 'fault',
          leads: plugs.map(({ lead }) => lead.id),
          pins: (fed ? left : connector.pins.map(({ pin }) => pin)).map((pin) => ({
            connector: connector.id,
            pin,
          })),
          data: { connector: connector.id, plugged: plugs.length > 0, left: fed ? left : [] },
          remedies: feedRemedies(context, connector),
        },
      ];
    }),
};

/** Pins that no plug covers. */
function bareLabels({ connector, plugs }: Inlet): readonly string[] {
  const covered = new Set(plugs.flatMap(({ fit }) => fit.landings.flatMap(({ pin }) => pin?.pin ?? [])));
  return gridIndex(connector.grid)
    .positions.map(({ label }) => label)
    .filter((label) => !covered.has(label));
}
