import { RUNNING } from '../../circuit/machine-state';
import { inputVolts } from '../../circuit/readings/inputs';
import { levelOf } from '../../circuit/readings/level';
import { atPlug, nodeOf, plugOnConnector } from '../about';
import type { FindingOf } from '../finding';
import { partsMeeting } from '../job-met';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * An AC'97 lead belongs on an AC'97 header; on an HD audio header the jacks are not detected.
 *
 * Good: an AC'97 block on an AC'97 header.
 * Bad: the same block on an HD audio header: a ground wire on the presence pin even reports an HD panel.
 */
export const ac97OnHdAudio: Rule<'ac97-on-hd-audio'> = {
  id: 'ac97-on-hd-audio',
  source: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.3.3 and 2.3.5.1.1',
  explains: ['places-exchanged', 'wrong-pins', 'wrong-function', 'reversed'],
  check: (context) =>
    context.plugs.flatMap((plug): readonly FindingOf<'ac97-on-hd-audio'>[] => {
      const parts = partsMeeting(plug, ['ac97-audio'], ['hd-audio']);
      if (parts.length === 0) return [];
      const onPresence = parts.flatMap(({ legs }) => legs.filter(({ id }) => id === 'hd-presence'))[0];
      const volts = onPresence && inputVolts(context.circuit, [nodeOf(onPresence)], RUNNING);
      return [
        {
          code: 'ac97-on-hd-audio',
          severity: 'fault',
          ...atPlug(plug),
          data: {
            ...plugOnConnector(plug),
            ...(volts && { presence: levelOf(volts), volts }),
          },
          remedies: remediesFor(context, plug.ref),
        },
      ];
    }),
};
