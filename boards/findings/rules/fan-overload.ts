import { loadsNow } from '../../routing/assign/assignments';
import { fansOf } from '../../routing/assign/build-fans';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';

/**
 * A fan header gives so much and no more: all that hangs on it counts, through a hub as well.
 *
 * Good: two fans of 0.2 A on a header for 1 A.
 * Bad: a hub without a supply of its own, with four fans that take 0.3 A each.
 */
export const fanOverload: Rule<'fan-overload'> = {
  id: 'fan-overload',
  source:
    'ratings: the board’s manual; starting current: 4-Wire PWM Controlled Fans Specification rev 1.3, 2.1.2',
  explains: [],
  check: ({ build }) => {
    const fans = fansOf(build);
    return loadsNow(fans).flatMap(
      ({ header, startA, runningA, ratedA, from }): readonly FindingOf<'fan-overload'>[] => {
        if (startA <= ratedA) return [];
        const connector = build.board.connectors.find(({ id }) => id === header);
        const hub = fans.hubs.get(header)?.unit;
        // Fed from the supply unit, a hub is what is rated, and its rating was always read.
        const isRead = from === 'supply' || connector?.rating?.amps !== undefined;
        const running = runningA > ratedA;
        return [
          {
            code: 'fan-overload',
            severity: isRead ? (running ? 'danger' : 'fault') : 'doubt',
            leads: fans.fans.flatMap(({ id }) => (fans.now.get(id)?.header === header ? [id] : [])),
            pins:
              connector?.pins.flatMap(({ pin, signal }) =>
                signal === 'fan-supply' ? [{ connector: header, pin }] : [],
              ) ?? [],
            data: {
              connector: header,
              ...(hub && { hub: hub.id, fedBySupply: from === 'supply' }),
              startAmps: startA,
              runningAmps: runningA,
              ratedAmps: ratedA,
              isRead,
            },
            remedies: [
              {
                text:
                  from === 'supply'
                    ? 'Take fans off the hub, or share them between two.'
                    : 'Move fans to other headers, or to a hub that has its own lead to the supply unit.',
              },
            ],
          },
        ];
      },
    );
  },
};
