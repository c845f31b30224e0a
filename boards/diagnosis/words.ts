import { CAUSES } from './faults/causes';
import { observationNamed } from './observations/observations';
import type { Double } from './posterior';

/** Said when nothing known explains what was noticed better than "none of these". */
export const NONE_LIKELIEST =
  'What was noticed fits none of the known faults well. Look again, or ask somebody qualified.';

/** Two suspects at once, as one. */
export function doubleWords({ causes: [first, second] }: Pick<Double, 'causes'>): string {
  return `two things at once: ${CAUSES[first]}, and ${CAUSES[second]}`;
}

/** What of the answers cannot be true together, a sentence for each; empty where they may be. */
export function contradictionWords({
  contradicted,
  excluding,
}: {
  readonly contradicted: readonly string[];
  readonly excluding: readonly (readonly [string, string])[];
}): readonly string[] {
  return [
    ...contradicted.map((id) => `Said to be so and not to be so: ${asked(id)} Look again.`),
    ...excluding.map(
      ([one, other]) =>
        `Said to be so, and they exclude each other: ${asked(one)} and ${asked(other)} Look again.`,
    ),
  ];
}

function asked(id: string): string {
  return `“${observationNamed(id)?.question ?? id}”`;
}
