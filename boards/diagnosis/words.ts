import { CAUSES } from './faults/causes';
import type { Double } from './posterior';

/** Said when nothing known explains what was noticed better than "none of these". */
export const NONE_LIKELIEST =
  'What was noticed fits none of the known faults well. Look again, or ask somebody qualified.';

/** Two suspects at once, as one. */
export function doubleWords({ causes: [first, second] }: Pick<Double, 'causes'>): string {
  return `two things at once: ${CAUSES[first]}, and ${CAUSES[second]}`;
}
