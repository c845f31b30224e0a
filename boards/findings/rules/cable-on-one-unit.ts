import { grouped } from '../../base/grouped';
import type { Build } from '../../document/build';
import { unitWith } from '../../document/lookup';
import { atPlug, plugOnConnector } from '../about';
import type { CheckedPlug } from '../context';
import type { FindingOf } from '../finding';
import { unitText } from '../power-remedies';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * A cable has to lead from one thing to another.
 *
 * Good: from an outlet of the supply to a drive.
 * Bad: both ends on the supply, or on one hub: it feeds nothing, and joins what was apart.
 */
export const cableOnOneUnit: Rule<'cable-on-one-unit'> = {
  id: 'cable-on-one-unit',
  source: 'common practice, no source',
  explains: [],
  check: (context) => {
    const cables = context.plugs.filter(({ lead }) => lead.parts.length === 0);
    const byLead = grouped(cables, ({ lead }) => lead.id);
    return [...byLead].flatMap(([lead, plugs]): readonly FindingOf<'cable-on-one-unit'>[] => {
      const [first, second] = plugs;
      if (!first || !second || !meets(context.build, plugs)) return [];
      return [
        {
          code: 'cable-on-one-unit',
          severity: 'fault',
          leads: [lead],
          pins: plugs.flatMap((plug) => atPlug(plug).pins),
          data: {
            ...plugOnConnector(second),
            on: unitText(context.build, first.connector.id),
          },
          remedies: remediesFor(context, second.ref),
        },
      ];
    });
  },
};

/** All plugs of it on one unit, or on one connector of the board. */
function meets(build: Build, plugs: readonly CheckedPlug[]): boolean {
  const [first, ...others] = plugs.map(({ connector }) => connector.id);
  if (first === undefined || others.length === 0) return false;
  const unit = unitWith(build, first);
  return others.every((id) => (unit === undefined ? id === first : unitWith(build, id) === unit));
}
