import { byIdentity } from '../base/by-identity';
import type { Build } from '../document/build';
import { anyConnectorOf, type PinRef, pinOf } from '../document/lookup';
import { type Circuit, circuitOf } from './circuit';
import type { Corner } from './corner';
import { GROUND, type NodeName } from './device';
import { type Element, partDeviceId, pinIn, pinNode, type Subject, wireDeviceId } from './elements';
import type { MachineState } from './machine-state';
import { type Solution, solve } from './solve';

/** A pin, wire or part with everything that current could reach from it, solved in one state. */
export interface Surroundings {
  readonly element: Element;
  readonly elements: readonly Element[];
  readonly solution: Solution;
}

/** The pins, wires and parts that meet at each node of a circuit. */
export const elementsAt = byIdentity((circuit: Circuit): ReadonlyMap<NodeName, readonly Element[]> => {
  const found = new Map<NodeName, Element[]>();
  for (const element of circuit.elements)
    for (const node of element.nodes) {
      const here = found.get(node);
      if (here) here.push(element);
      else found.set(node, [element]);
    }
  return found;
});

/** What lies round a subject; a pin that nothing touches is solved alone. Undefined where there is none. */
export function surroundings(
  build: Build,
  subject: Subject,
  state: MachineState,
  corner: Corner,
): Surroundings | undefined {
  const circuit = circuitOf(build);
  const element = circuit.element(elementId(subject));
  const solution = element && circuit.solution(element.id, state, corner);
  if (element && solution) return { element, elements: reachable(circuit, element), solution };
  const alone = subject.kind === 'pin' ? untouched(build, subject.pin) : undefined;
  return alone && { element: alone, elements: [alone], solution: solve(alone.devices(state, corner)) };
}

function elementId(subject: Subject): string {
  switch (subject.kind) {
    case 'pin':
      return pinNode(subject.pin.connector, subject.pin.pin);
    case 'wire':
      return wireDeviceId(subject.lead, subject.wire);
    case 'part':
      return partDeviceId(subject.lead, subject.part);
  }
}

function untouched(build: Build, { connector: id, pin: label }: PinRef): Element | undefined {
  const connector = anyConnectorOf(build, id);
  const pin = connector && pinOf(connector, label);
  return pin && !pin.missing ? pinIn(build, connector, pin) : undefined;
}

function reachable(circuit: Circuit, start: Element): readonly Element[] {
  const found = new Set([start]);
  // A set hands out what is added while it is gone through.
  for (const { nodes } of found)
    for (const node of nodes)
      if (node !== GROUND) for (const next of elementsAt(circuit).get(node) ?? []) found.add(next);
  return [...found];
}
