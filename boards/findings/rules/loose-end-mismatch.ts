import { uniquePins } from '../about';
import { fedHolesOf, isHarmful, isWronglyFed } from '../fed-pins';
import type { FindingOf } from '../finding';
import { cableRemedy, plugAtSupply } from '../power-remedies';
import type { Rule } from '../rule';

/**
 * A power plug that lies loose on a cable of the supply has to bring what plugs of its shape are made for.
 *
 * Good: the second SATA plug of a cable on its own supply.
 * Bad: a SATA cable on another supply's outlet, with no drive on it yet: whatever is plugged in gets +12 V for +5 V.
 */
export const looseEndMismatch: Rule<'loose-end-mismatch'> = {
  id: 'loose-end-mismatch',
  source: 'pin tables of the power connectors, each named where its pins are listed',
  explains: [],
  check: (context) =>
    context.loose.flatMap((loose): readonly FindingOf<'loose-end-mismatch'>[] => {
      const { ref, lead } = loose;
      if (lead.setAside || plugAtSupply(context, lead.id) === undefined) return [];
      const wrong = fedHolesOf(context.build, loose).filter(isWronglyFed);
      if (!wrong.some(isHarmful)) return [];
      const [arrives] = wrong.filter(isHarmful).flatMap((hole) => hole.arrives ?? []);
      return [
        {
          code: 'loose-end-mismatch',
          severity: 'danger',
          leads: [lead.id],
          pins: uniquePins(wrong.flatMap(({ from }) => from)),
          data: { plug: ref, wrong, ...(arrives && { arrives }) },
          remedies: cableRemedy(context, ref),
        },
      ];
    }),
};
