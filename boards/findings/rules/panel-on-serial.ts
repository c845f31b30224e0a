import { isLed } from '../../signals/part-traits';
import { atPlug, plugOnConnector } from '../about';
import type { FindingOf } from '../finding';
import { PANEL_JOBS, partsMeeting } from '../job-met';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * Panel leads must not sit on a serial header: the key is the same, and its lines swing to both sides of ground.
 *
 * Good: a panel block on the panel header.
 * Bad: the same block on the serial header: LEDs would take the swings backwards, which they are not made for.
 * Switches alone would only do nothing there.
 */
export const panelOnSerial: Rule<'panel-on-serial'> = {
  id: 'panel-on-serial',
  source: 'TIA-232; 2x5 header with the key on pin 10 as listed in a single-board manual',
  explains: ['places-exchanged', 'pair-split', 'wrong-pins', 'wrong-function', 'shifted', 'input-held'],
  check: (context) =>
    context.plugs.flatMap((plug): readonly FindingOf<'panel-on-serial'>[] => {
      const parts = partsMeeting(plug, PANEL_JOBS, ['serial']);
      if (parts.length === 0) return [];
      return [
        {
          code: 'panel-on-serial',
          severity: parts.some(({ kind }) => isLed(kind)) ? 'danger' : 'fault',
          ...atPlug(plug),
          data: { ...plugOnConnector(plug), parts: parts.map(({ part }) => part.id) },
          remedies: remediesFor(context, plug.ref),
        },
      ];
    }),
};
