import { powerJobOf } from '../../document/power-job';
import { atPlug, plugOnConnector } from '../about';
import type { FindingOf } from '../finding';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * A CPU plug must not be forced on a card's socket, nor a card plug on the CPU's: as large, and the other way up.
 *
 * Good: each on its own.
 * Bad: a card plug pushed on the CPU's socket: its row of +12 V lies on the row of grounds.
 */
export const cpuCardExchanged: Rule<'cpu-card-exchanged'> = {
  id: 'cpu-card-exchanged',
  source:
    'a textbook: opposite rows, a forced crossing shorts +12 V to ground; ATX 3.0 power supply design guide (336521), Table 5-5',
  explains: ['seat-impossible', 'supply-mismatch', 'pins-joined', 'contact-off-pins'],
  check: (context) =>
    context.plugs.flatMap((plug): readonly FindingOf<'cpu-card-exchanged'>[] => {
      const made = powerJobOf({ family: plug.plug.family, pins: [] });
      const met = powerJobOf(plug.connector);
      const crossed =
        (made === 'cpu-power' && met === 'card-power') || (made === 'card-power' && met === 'cpu-power');
      if (!crossed) return [];
      return [
        {
          code: 'cpu-card-exchanged',
          severity: 'danger',
          ...atPlug(plug),
          data: { ...plugOnConnector(plug), made, met },
          remedies: remediesFor(context, plug.ref),
        },
      ];
    }),
};
