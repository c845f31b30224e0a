import { SOLDERED } from '../../document/power-job';
import { atPlug, plugOnConnector } from '../about';
import type { CheckedPlug } from '../context';
import type { FindingOf } from '../finding';
import type { Unsure } from '../finding-data';
import type { Rule } from '../rule';
import { unsureBecause } from '../unsure';

/**
 * A wire should lie on a pin whose meaning is known for sure.
 *
 * Good: a pin read in the board's manual; a speaker on two pins that sources name the other way round,
 * since it works both ways.
 * Bad: a pin that was guessed, or that another source calls something the wire is not made for.
 */
export const pinUnsure: Rule<'pin-unsure'> = {
  id: 'pin-unsure',
  source: 'common practice, no source',
  explains: [],
  check: ({ plugs }) =>
    plugs.filter(isPluggedIn).flatMap((plug): readonly FindingOf<'pin-unsure'>[] => {
      const reasons = new Map<string, Unsure>();
      for (const joint of plug.joints) {
        const why = unsureBecause(joint);
        if (joint.pin && why) reasons.set(joint.pin.pin, why);
      }
      if (reasons.size === 0) return [];
      const unsure = [...reasons].map(([pin, why]) => ({ pin, why }));
      return [
        {
          code: 'pin-unsure',
          severity: 'doubt',
          leads: atPlug(plug).leads,
          pins: unsure.map(({ pin }) => ({ connector: plug.connector.id, pin })),
          data: { ...plugOnConnector(plug), unsure },
          remedies: [],
        },
      ];
    }),
};

/** Wires that are soldered in lie where their maker put them, whatever is known of the place. */
function isPluggedIn({ connector }: CheckedPlug): boolean {
  return connector.family !== SOLDERED;
}
