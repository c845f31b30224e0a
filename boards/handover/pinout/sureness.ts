import type { Pin } from '../../document/connector';
import { contradictions, surenessOf } from '../../document/sureness';

const DOUBTFUL: ReadonlySet<string> = new Set(['unknown', 'guessed', 'likely']);

/** Whether a pin is marked on the drawing as one to be measured before anything is laid on it. */
export function isDoubtful(pin: Pin): boolean {
  return pin.missing !== true && DOUBTFUL.has(surenessOf(pin));
}

/** Whether another source says something else of a pin. */
export function isDisputed(pin: Pin): boolean {
  return contradictions(pin).length > 0;
}
