import { type Circuit, circuitOf } from '../circuit/circuit';
import { withPart } from '../document/with-part';
import { staysClosed } from '../signals/part-traits';
import type { CheckContext } from './context';
import type { SeatedPart } from './seated-part';

/**
 * The circuit in which a part does the most that it can: no state of the machine closes the switch of a lid or a
 * lock, so it is taken as closed for good. For any other part, the circuit as it is.
 */
export function circuitWhenClosed(
  { build, circuit }: Pick<CheckContext, 'build' | 'circuit'>,
  { lead, part, kind }: SeatedPart,
): Circuit {
  if (!staysClosed(kind) || part.condition !== undefined) return circuit;
  return circuitOf(withPart(build, lead, { ...part, condition: 'stuck' }));
}
