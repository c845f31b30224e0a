import { atPlug, plugOnConnector } from '../about';
import type { Rule } from '../rule';

/**
 * A plug may reach past the end of a header where nothing is in the way, and the person should know.
 *
 * Good: a three-wide plug on three pins.
 * Bad: a three-wide plug with its contacts on the last two pins and an empty hole beyond them.
 */
export const overhang: Rule<'overhang'> = {
  id: 'overhang',
  source: 'common practice, no source',
  explains: [],
  check: ({ plugs }) =>
    plugs
      .filter(({ fit }) => fit.overhang.length > 0)
      .map((plug) => ({
        code: 'overhang',
        severity: 'note',
        ...atPlug(plug),
        data: { ...plugOnConnector(plug), holes: plug.fit.overhang },
        remedies: [],
      })),
};
