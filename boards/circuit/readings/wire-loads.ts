import type { Amps, Ohms } from '../../base/units';
import type { Circuit } from '../circuit';
import { type Corner, LOAD_CORNERS } from '../corner';
import { wireDeviceId } from '../elements';
import type { MachineState } from '../machine-state';

/** What one 2.54 mm contact is rated for (socket strip data sheet, read in secondary). */
export const CONTACT_MOST_AMPS: Amps = 3;

/** The most a wire would carry, and when. */
export interface WireLoad {
  readonly amps: Amps;
  /** What the resistance of wire and contacts turns into heat then. */
  readonly watts: number;
  readonly state: MachineState;
}

/** The heaviest load of a wire over all states and ranges; undefined where no plug of its lead is seated. */
export function heaviestLoad(circuit: Circuit, lead: string, wire: number): WireLoad | undefined {
  const element = wireDeviceId(lead, wire);
  let worst: WireLoad | undefined;
  for (const state of circuit.statesOf(element)) {
    for (const corner of LOAD_CORNERS) {
      const amps = Math.abs(circuit.amps(element, element, state, corner));
      if (worst && amps <= worst.amps) continue;
      worst = { amps, watts: amps ** 2 * ohmsOf(circuit, element, state, corner), state };
    }
  }
  return worst;
}

function ohmsOf(circuit: Circuit, element: string, state: MachineState, corner: Corner): Ohms {
  const device = circuit.element(element)?.devices(state, corner)[0];
  return device?.kind === 'resistor' ? device.ohms : 0;
}
