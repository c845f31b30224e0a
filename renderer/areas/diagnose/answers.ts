import { type ReadLine, tellingLines } from '../../../boards/diagnosis/log/read-log';
import type { ObservationId } from '../../../boards/diagnosis/observations/observations';

/** What was said to a question; "both" in a log where it was said to be so and not to be so. */
export type Answer = 'yes' | 'no' | 'both';

/** The answers that count; a question that is not in it has not been looked at yet. */
export function answersIn(lines: readonly ReadLine[]): ReadonlyMap<ObservationId, Answer> {
  const answers = new Map<ObservationId, Answer>();
  for (const { told } of tellingLines(lines)) {
    if (told.kind !== 'noticed') continue;
    const before = answers.get(told.id);
    answers.set(told.id, before !== undefined && before !== told.answer ? 'both' : told.answer);
  }
  return answers;
}
