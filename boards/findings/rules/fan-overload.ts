import { anyConnectorOf } from '../../document/lookup';
import { type BuildFans, fansOf } from '../../routing/assign/build-fans';
import { type FanLoad, fanLoads } from '../../routing/assign/fan-loads';
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
    return fanLoads(fans).flatMap((load): readonly FindingOf<'fan-overload'>[] => {
      const { header, hub, fans: leads, startA, runningA, ratedA, from } = load;
      if (startA <= ratedA) return [];
      const unread = unreadOf(fans, load);
      const severity = runningA > ratedA ? 'danger' : 'fault';
      return [
        {
          code: 'fan-overload',
          severity: unread === undefined ? severity : 'doubt',
          leads,
          pins:
            anyConnectorOf(build, header)?.pins.flatMap(({ pin, signal }) =>
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
    });
  },
};

/** What of a sum that is held against the rating of a hub, or else of a header, nobody has read. */
function unreadOf(
  { assumed }: BuildFans,
  { header, hub, fans, from, ratedA }: FanLoad,
): FindingData['fan-overload']['unread'] {
  // Fed from the supply unit, a hub is what is rated; else whichever of the two may carry less.
  const isHubs = hub !== undefined && (from === 'supply' || hub.rating.amps === ratedA);
  if (isHubs && hub.unit.hub === undefined) return 'hub';
  if (!isHubs && assumed.some((each) => each.code === 'header-amps' && each.connector === header))
    return 'header';
  return assumed.some((each) => each.code === 'fan' && fans.includes(each.lead)) ? 'fan' : undefined;
}
