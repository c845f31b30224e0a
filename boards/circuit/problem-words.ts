import { listed } from '../base/listed';
import type { CircuitProblem } from './problem';

/** What a circuit cannot do, in a sentence, and why. Devices and nodes go by the names that `nameOf` gives them. */
export function circuitProblemWords(problem: CircuitProblem, nameOf: (id: string) => string): string {
  switch (problem.code) {
    case 'sources-fight': {
      const what =
        problem.with.length === 0
          ? `${nameOf(problem.device)} has both ends at one point`
          : `${named([problem.device, ...problem.with], nameOf)} are tied together and disagree about the voltage`;
      return `${what}: nothing but the metal between them would limit the current.`;
    }
    case 'current-undetermined': {
      const loop = named([problem.device, ...problem.with], nameOf);
      return `The way through ${loop} is a closed loop without resistance: voltages are certain, what flows round it is not.`;
    }
    case 'no-way-back':
      return `The current of ${nameOf(problem.device)} has no way back, so that none would flow.`;
    case 'gave-up':
      return `No settled state was found for ${named(problem.nodes, nameOf)} in ${problem.steps}\u00a0steps: the values told are only the last ones tried.`;
  }
}

/** As many names as one takes in at a glance. */
const SHOWN = 4;

function named(ids: readonly string[], nameOf: (id: string) => string): string {
  const shown = ids.slice(0, SHOWN).map(nameOf);
  const more = ids.length - shown.length;
  return listed(more > 0 ? [...shown, `${more}\u00a0more`] : shown);
}
