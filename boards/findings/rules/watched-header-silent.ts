import { fansEndingAt, fansOf, reportsSpeed } from '../../routing/assign/build-fans';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';
import { reportSpeedText } from '../words/remedies';

/**
 * A board that watches a header for the processor’s fan stops, or does not start, while no speed comes from it.
 *
 * Good: the fan on the cooler, or what the board is told to watch instead, on that header.
 * Bad: every fan on the headers for the case; or a fan there without a speed wire.
 */
export const watchedHeaderSilent: Rule<'watched-header-silent'> = {
  id: 'watched-header-silent',
  source:
    'which header is watched: the board’s manual; that a silent one stops the start: common practice, no source',
  explains: [],
  check: ({ build }) => {
    const fans = fansOf(build);
    return build.board.connectors.flatMap((connector): readonly FindingOf<'watched-header-silent'>[] => {
      if (connector.rating?.watched !== true) return [];
      const here = fansEndingAt(fans, connector.id);
      if (here.some(({ id }) => reportsSpeed(fans, id))) return [];
      const silent = here[0];
      const cooler = silent ?? fans.fans.find(({ cools }) => cools === 'processor');
      return [
        {
          code: 'watched-header-silent',
          severity: 'fault',
          leads: cooler ? [cooler.id] : [],
          pins: connector.pins.flatMap(({ pin, signal }) =>
            signal === 'fan-tach' ? [{ connector: connector.id, pin }] : [],
          ),
          data: { connector: connector.id, ...(cooler && { fan: cooler.id }), isEmpty: silent === undefined },
          remedies: [{ text: reportSpeedText(silent !== undefined) }],
        },
      ];
    });
  },
};
