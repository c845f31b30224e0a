import { loadsNow } from '../../routing/assign/assignments';
import { type BuildFans, fansOf, fansOn, type JoinedHub } from '../../routing/assign/build-fans';
import type { FindingOf } from '../finding';
import type { FindingData } from '../finding-data';
import type { Rule } from '../rule';
import { fewerFansText } from '../words/remedies';

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
        const hub = fans.hubs.get(header);
        // Fed from the supply unit, a hub is what is rated; else whichever of the two may carry less.
        const isHubs = hub !== undefined && (from === 'supply' || hub.rating.amps === ratedA);
        const unread = unreadOf(fans, header, isHubs ? hub : undefined);
        const severity = runningA > ratedA ? 'danger' : 'fault';
        return [
          {
            code: 'fan-overload',
            severity: unread === undefined ? severity : 'doubt',
            leads: fansOn(fans, header).map(({ id }) => id),
            pins:
              connector?.pins.flatMap(({ pin, signal }) =>
                signal === 'fan-supply' ? [{ connector: header, pin }] : [],
              ) ?? [],
            data: {
              connector: header,
              ...(hub && { hub: hub.unit.id, fedBySupply: from === 'supply' }),
              startAmps: startA,
              runningAmps: runningA,
              ratedAmps: ratedA,
              ...(unread && { unread }),
            },
            remedies: [{ text: fewerFansText(from === 'supply') }],
          },
        ];
      },
    );
  },
};

/** What of a sum that is held against the rating of a hub, or else of a header, nobody has read. */
function unreadOf(
  fans: BuildFans,
  header: string,
  hub: JoinedHub | undefined,
): FindingData['fan-overload']['unread'] {
  if (hub !== undefined && hub.unit.hub === undefined) return 'hub';
  if (
    hub === undefined &&
    fans.assumed.some((each) => each.code === 'header-amps' && each.connector === header)
  )
    return 'header';
  const on = new Set(fansOn(fans, header).map(({ id }) => id));
  return fans.assumed.some((each) => each.code === 'fan' && on.has(each.lead)) ? 'fan' : undefined;
}
