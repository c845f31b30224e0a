import { atPlug, plugOnConnector } from '../about';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * A plug has to be able to sit where the build says it does.
 *
 * Good: a keyed block with its blocked hole over the missing pin.
 * Bad: a build file that seats two plugs on the same pins.
 */
export const seatImpossible: Rule<'seat-impossible'> = {
  id: 'seat-impossible',
  source: 'common practice, no source',
  explains: ['overhang', 'contact-off-pins'],
  check: (context) =>
    context.plugs
      .filter(({ fit }) => fit.refusals.length > 0)
      .map((plug) => ({
        code: 'seat-impossible',
        severity: 'fault',
        ...atPlug(plug),
        data: { ...plugOnConnector(plug), refusals: plug.fit.refusals },
        remedies: remediesFor(context, plug.ref),
      })),
};
