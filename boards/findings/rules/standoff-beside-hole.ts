import { STANDOFF_SOURCE } from '../../routing/case/standoff-words';
import type { Rule } from '../rule';
import { emptyRemedy, standoffFindings } from '../standoff-findings';
import { measureAgainText } from '../words/remedies';

/**
 * A standoff near a hole of the board and not right under it: measured wrong, or its head touches what runs
 * beside the hole.
 *
 * Good: every standoff is seen through its hole.
 * Bad: one stands 4 mm beside.
 */
export const standoffBesideHole: Rule<'standoff-beside-hole'> = {
  id: 'standoff-beside-hole',
  source: STANDOFF_SOURCE,
  explains: [],
  check: ({ build }) =>
    standoffFindings(build, 'off').map(({ standoff, hole, byMm }) => ({
      code: 'standoff-beside-hole',
      severity: 'doubt',
      leads: [],
      pins: [],
      data: { standoff, hole, byMm },
      remedies: [
        { text: measureAgainText() },
        ...(build.case.tray?.standoffs?.find(({ id }) => id === standoff)?.fixed
          ? []
          : [emptyRemedy(standoff, false)]),
      ],
    })),
};
