import type { Circuit } from '../circuit';
import { type Span, spanOf } from '../corner';
import type { NodeName } from '../device';
import type { MachineState } from '../machine-state';

/** One node against another over the ranges; undefined where either hangs in the air. */
export function voltsBetween(
  circuit: Circuit,
  plus: NodeName | undefined,
  minus: NodeName | undefined,
  state: MachineState,
): Span | undefined {
  if (plus === undefined || minus === undefined) return undefined;
  let open = false;
  const span = spanOf((corner) => {
    const high = circuit.volts(plus, state, corner);
    const low = circuit.volts(minus, state, corner);
    if (high === undefined || low === undefined) open = true;
    return (high ?? 0) - (low ?? 0);
  });
  return open ? undefined : span;
}
