import type { Job } from '../../signals/signal';
import { atPart, plugRefOf } from '../about';
import type { FindingOf } from '../finding';
import { jobsUnder, placementOf } from '../placement';
import { remediesForPart } from '../remedies';
import type { Rule } from '../rule';
import type { SeatedPart } from '../seated-part';

/**
 * Two leads must not sit in each other's place.
 *
 * Good: power LED and drive LED each on their own pins.
 * Bad: the one on the other's: each would show what the other is for.
 */
export const placesExchanged: Rule<'places-exchanged'> = {
  id: 'places-exchanged',
  source: 'common practice, no source',
  explains: ['wrong-function', 'pair-split', 'shifted'],
  check: (context) => {
    const strangers = context.parts.filter((part) => foreignJob(part) !== undefined);
    return strangers.flatMap((first, index): readonly FindingOf<'places-exchanged'>[] => {
      const second = strangers
        .slice(index + 1)
        .find((other) => foreignJob(other) === first.kind.job && foreignJob(first) === other.kind.job);
      const [firstLeg] = first.legs;
      const [secondLeg] = second?.legs ?? [];
      if (!second || !firstLeg || !secondLeg || first.lead === second.lead) return [];
      return [
        {
          code: 'places-exchanged',
          severity: 'fault',
          leads: [first.lead.id, second.lead.id],
          pins: [...atPart(first).pins, ...atPart(second).pins],
          data: { first: plugRefOf(firstLeg), second: plugRefOf(secondLeg) },
          remedies: remediesForPart(context, first),
        },
      ];
    });
  },
};

/** The one other job whose pins a part lies on with all its wires. */
function foreignJob(part: SeatedPart): Job | undefined {
  const [job, another] = jobsUnder(part);
  if (job === undefined || another !== undefined || job === part.kind.job) return undefined;
  return placementOf(part) === 'right' ? undefined : job;
}
