import type { Amps, Ohms } from '../../base/units';
import type { Build } from '../../document/build';
import { leadsOf } from '../../document/lookup';
import type { Circuit } from '../circuit';
import { type Corner, LOAD_CORNERS } from '../corner';
import { wireDeviceId } from '../elements';
import type { MachineState } from '../machine-state';

/** What one 2.54 mm contact is rated for (socket strip data sheet, read in secondary). */
export const CONTACT_MOST_AMPS: Amps = 3;

/** The most a wire would carry, and when. */
export interface WireLoad {
  readonly lead: string;
  readonly wire: number;
  readonly amps: Amps;
  /** What the resistance of wire and contacts turns into heat then. */
  readonly watts: number;
  readonly state: MachineState;
}

/** The heaviest load of every wire of a seated lead over all states and ranges. */
export function wireLoads(build: Build, circuit: Circuit): readonly WireLoad[] {
  const present = new Set(circuit.elements.map(({ id }) => id));
  return leadsOf(build).flatMap((lead) =>
    lead.wires.flatMap((_, index) => {
      const element = wireDeviceId(lead.id, index);
      return present.has(element) ? [heaviest(circuit, lead.id, index, element)] : [];
    }),
  );
}

function heaviest(circuit: Circuit, lead: string, wire: number, element: string): WireLoad {
  let worst: { amps: Amps; ohms: Ohms; state: MachineState } | undefined;
  for (const state of circuit.statesOf(element)) {
    for (const corner of LOAD_CORNERS) {
      const amps = Math.abs(circuit.amps(element, element, state, corner));
      if (worst === undefined || amps > worst.amps)
        worst = { amps, ohms: ohmsOf(circuit, element, state, corner), state };
    }
  }
  if (!worst) throw new Error('There is at least one state');
  return { lead, wire, amps: worst.amps, watts: worst.amps ** 2 * worst.ohms, state: worst.state };
}

function ohmsOf(circuit: Circuit, element: string, state: MachineState, corner: Corner): Ohms {
  const device = circuit.elements.find(({ id }) => id === element)?.devices(state, corner)[0];
  return device?.kind === 'resistor' ? device.ohms : 0;
}
