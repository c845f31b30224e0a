import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import type { PinRef, PlugRef } from '../../document/lookup';
import { elementsAt } from '../around';
import { type Circuit, openCircuitOf } from '../circuit';
import { type Span, spanOf } from '../corner';
import { GROUND, type NodeName } from '../device';
import { leadNode, pinNode } from '../elements';
import type { MachineState } from '../machine-state';
import { standingOf } from '../standing';

/** What the wires bring to a pin that takes power, while the device is not there. */
export interface Arrival {
  /** The pins that give, as far as wires and hubs lead to them; the nearest first. */
  readonly from: readonly PinRef[];
  /** The leads that the wires belong to, the nearest first. */
  readonly leads: readonly string[];
  /** Against ground over the ranges; undefined where it hangs in the air. */
  readonly volts: (state: MachineState) => Span | undefined;
}

/** Follows every wire from a pin back to where it comes from, and says what a meter would show at its end. */
export function arrivalAt(build: Build, { connector, pin }: PinRef): Arrival {
  return arrivalAtNode(build, pinNode(connector, pin));
}

/** The same at a hole of a plug that lies loose. */
export function arrivalAtHole(build: Build, { lead, plug }: PlugRef, hole: string): Arrival {
  return arrivalAtNode(build, leadNode(lead, `${plug}.${hole}`));
}

function arrivalAtNode(build: Build, node: NodeName): Arrival {
  const circuit = openCircuitOf(build);
  const { from, leads } = followed(build, circuit, node);
  return { from, leads, volts: (state) => openVolts(circuit, node, state) };
}

function openVolts(circuit: Circuit, node: NodeName, state: MachineState): Span | undefined {
  let open = false;
  const span = spanOf((corner) => {
    const volts = circuit.volts(node, state, corner);
    if (volts === undefined) open = true;
    return volts ?? 0;
  });
  return open ? undefined : span;
}

interface Followed {
  readonly from: readonly PinRef[];
  readonly leads: readonly string[];
}

const known = byIdentity((_: Circuit) => new Map<NodeName, Followed>());

function followed(build: Build, circuit: Circuit, start: NodeName): Followed {
  const before = known(circuit).get(start);
  if (before) return before;
  const from: PinRef[] = [];
  const leads = new Set<string>();
  const nodes = new Set<NodeName>([start]);
  // A set hands out what is added while it is gone through.
  for (const node of nodes) {
    const here = elementsAt(circuit).get(node) ?? [];
    const giver = here.find(
      ({ id, subject }) =>
        id === node && subject.kind === 'pin' && standingOf(build, subject.pin.connector).kind === 'gives',
    );
    if (giver?.subject.kind === 'pin') {
      from.push(giver.subject.pin);
      // What goes on from an outlet is fed by the outlet, not by what hangs on it.
      continue;
    }
    for (const { subject, nodes: ends } of here) {
      if (subject.kind === 'part') continue;
      if (subject.kind === 'wire') leads.add(subject.lead);
      for (const end of ends) if (end !== GROUND) nodes.add(end);
    }
  }
  const found = { from, leads: [...leads] };
  known(circuit).set(start, found);
  return found;
}
