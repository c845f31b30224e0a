import type { Amps } from '../../base/units';
import type { Circuit } from '../circuit';
import type { Corner } from '../corner';

/** The current at which a fuse behind a pin would trip in some state; undefined when none does. */
export function tripOf(circuit: Circuit, pin: string, corner: Corner): Amps | undefined {
  for (const state of circuit.statesOf(pin)) {
    const tripped = circuit.solution(pin, state, corner)?.tripped;
    if (!tripped?.size) continue;
    for (const device of circuit.element(pin)?.devices(state, corner) ?? []) {
      if (device.kind === 'fuse' && tripped.has(device.id)) return device.tripAmps;
    }
  }
  return undefined;
}
