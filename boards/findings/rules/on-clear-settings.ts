import { atPart, partOnPins } from '../about';
import { across } from '../across';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import { jobAt, pairsOf, type SeatedPart } from '../seated-part';

/**
 * The clear-settings jumper takes its cap, in the place that keeps the settings, and no lead.
 *
 * Good: the cap on the two pins that keep.
 * Bad: a switch lead on them, since two pins looked like the right ones; the cap left on the two that clear.
 */
export const onClearSettings: Rule<'on-clear-settings'> = {
  id: 'on-clear-settings',
  source: 'common practice, no source',
  explains: ['pair-split', 'wrong-pins', 'wrong-function', 'places-exchanged', 'shifted', 'input-held'],
  check: (context) =>
    context.parts.filter(isAstray).map((part) => ({
      code: 'on-clear-settings',
      severity: 'fault',
      ...atPart(part),
      data: partOnPins(part),
      remedies: remediesForPart(context, part),
    })),
};

function isAstray(part: SeatedPart): boolean {
  if (part.kind.job !== 'clear-settings') return part.legs.some((leg) => jobAt(leg) === 'clear-settings');
  return pairsOf(part).some((pair) => {
    const found = across(...pair);
    return found.kind === 'input-and-ground' && found.job === 'clear-settings';
  });
}
