import { unitsOf, unitWith } from '../../document/lookup';
import { atPlug } from '../about';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';
import { readSheetText } from '../words/remedies';

/**
 * What a supply has on the pins of its outlets is its maker's own: where nobody has written it down, nothing is certain.
 *
 * Good: outlets with pins from the maker's sheet.
 * Bad: a cable on an outlet of which nothing is known, or a supply of which no outlet is described.
 */
export const outletsUnknown: Rule<'outlets-unknown'> = {
  id: 'outlets-unknown',
  source: 'common practice, no source',
  explains: ['pin-unsure'],
  check: ({ build, plugs }) =>
    unitsOf(build)
      .filter(({ kind }) => kind === 'supply')
      .flatMap((supply): readonly FindingOf<'outlets-unknown'>[] => {
        const untold = plugs.filter(
          (plug) =>
            unitWith(build, plug.connector.id) === supply &&
            plug.joints.some(({ pin }) => pin && (pin.signal === undefined || pin.signal === 'unknown')),
        );
        if (untold.length === 0 && supply.connectors.length > 0) return [];
        return [
          {
            code: 'outlets-unknown',
            severity: 'doubt',
            leads: [...new Set(untold.map(({ lead }) => lead.id))],
            pins: untold.flatMap((plug) => atPlug(plug).pins),
            data: { unit: supply.id, connectors: untold.map(({ connector }) => connector.id) },
            remedies: [{ text: readSheetText() }],
          },
        ];
      }),
};
