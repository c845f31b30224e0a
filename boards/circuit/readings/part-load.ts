import type { Amps } from '../../base/units';
import { type Lead, splitEnd } from '../../document/lead';
import type { Circuit } from '../circuit';
import { heaviestLoad, type WireLoad } from './wire-loads';

/** The worst load of the wires that end at one part. */
export interface PartLoad {
  readonly amps: Amps;
  /** Heat in the worst wire and its contacts. */
  readonly watts: number;
}

/** What would flow through a part's wires at most, over all states and ranges. */
export function partLoad(circuit: Circuit, lead: Lead, part: string): PartLoad {
  const loads = lead.wires.flatMap((wire, index): readonly WireLoad[] => {
    const own = splitEnd(wire.from).owner === part || splitEnd(wire.to).owner === part;
    const load = own ? heaviestLoad(circuit, lead.id, index) : undefined;
    return load ? [load] : [];
  });
  return {
    amps: Math.max(0, ...loads.map(({ amps }) => amps)),
    watts: Math.max(0, ...loads.map(({ watts }) => watts)),
  };
}
