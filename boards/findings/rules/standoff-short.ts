import { STANDOFF_SOURCE } from '../../routing/case/standoff-words';
import type { Rule } from '../rule';
import { emptyRemedy, standoffFindings } from '../standoff-findings';
import { fixedStandoffText } from '../words/remedies';

/**
 * A standoff under the board where it has no hole touches its underside and shorts what runs there.
 *
 * Good: the places of the tray that lie under no hole of this board were seen to be empty.
 * Bad: a standoff is left in the tray from a larger board. Where nobody has looked that is a doubt.
 */
export const standoffShort: Rule<'standoff-short'> = {
  id: 'standoff-short',
  source: STANDOFF_SOURCE,
  explains: [],
  check: ({ build }) =>
    standoffFindings(build, 'short').map(({ level, standoff, fixed }) => ({
      code: 'standoff-short',
      severity: level,
      leads: [],
      pins: [],
      data: { standoff, fixed },
      remedies: fixed ? [{ text: fixedStandoffText() }] : [emptyRemedy(standoff, level === 'danger')],
    })),
};
