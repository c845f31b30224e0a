import { byIdentity } from '../base/by-identity';
import { type Circuit, circuitOf } from '../circuit/circuit';
import type { Build } from '../document/build';
import type { Lead, Part } from '../document/lead';
import { withPart } from '../document/with-part';
import { wiringOf } from '../fit/seated-plug';
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
  return closedCircuitOf({ build, lead, part });
}

/** Several rules ask about one part within a check. */
const closedCircuitOf = byIdentity(
  ({ build, lead, part }: { readonly build: Build; readonly lead: Lead; readonly part: Part }): Circuit =>
    circuitOf(withPart(build, lead, { ...part, condition: 'stuck' })),
  ({ build, lead, part }) => [...wiringOf(build), lead, part],
);
