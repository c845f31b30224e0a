import { byIdentity } from '../base/by-identity';
import type { Amps, Volts } from '../base/units';
import type { Build } from '../document/build';
import { jointsOf } from '../fit/joints';
import { wiringOf } from '../fit/seated-plug';
import type { Corner } from './corner';
import { GROUND, type NodeName } from './device';
import { type Element, elementsOf } from './elements';
import { groupsOf, type SolvedGroup, solvedGroup } from './groups';
import type { MachineState } from './machine-state';
import type { Solution } from './solve';

/** A seated build as a circuit: asked, it solves; asked again, it remembers. */
export interface Circuit {
  readonly elements: readonly Element[];
  /** A pin, wire or part by its name; undefined where no seated plug touches it. */
  readonly element: (id: string) => Element | undefined;
  /** Against ground; undefined for a node that nothing of the build touches, or that floats. */
  readonly volts: (node: NodeName, state: MachineState, corner: Corner) => Volts | undefined;
  /** From a to b through a device of an element; 0 where there is none in that state. */
  readonly amps: (element: string, device: string, state: MachineState, corner: Corner) => Amps;
  /** The whole answer of the group that an element belongs to. */
  readonly solution: (element: string, state: MachineState, corner: Corner) => Solution | undefined;
  /** One state for each that an element can tell apart; none for an element that is not there. */
  readonly statesOf: (element: string) => readonly MachineState[];
}

/** The circuit of a build, from what its seated plugs touch; kept while the wiring stays the same. */
export const circuitOf = byIdentity(
  (build: Build): Circuit => circuitFrom(elementsOf(build, jointsOf(build))),
  wiringOf,
);

/** The same with nothing behind the pins that take power: what a meter would show on the wires alone. */
export const openCircuitOf = byIdentity(
  (build: Build): Circuit => circuitFrom(elementsOf(build, jointsOf(build), 'away')),
  wiringOf,
);

function circuitFrom(elements: readonly Element[]): Circuit {
  const byNode = new Map<NodeName, SolvedGroup>();
  const byElement = new Map<string, SolvedGroup>();
  for (const group of groupsOf(elements)) {
    const solver = solvedGroup(group);
    for (const element of group.elements) {
      byElement.set(element.id, solver);
      for (const node of element.nodes) byNode.set(node, solver);
    }
  }
  const byId = new Map(elements.map((element) => [element.id, element]));
  return {
    elements,
    element: (id) => byId.get(id),
    volts: (node, state, corner) => {
      if (node === GROUND) return 0;
      const solution = byNode.get(node)?.solution(state, corner);
      return solution?.floating.has(node) ? undefined : solution?.volts.get(node);
    },
    amps: (element, device, state, corner) =>
      byElement.get(element)?.solution(state, corner).amps.get(device) ?? 0,
    statesOf: (element) => byElement.get(element)?.states ?? [],
    solution: (element, state, corner) => byElement.get(element)?.solution(state, corner),
  };
}
