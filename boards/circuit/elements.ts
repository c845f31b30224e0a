import type { Build } from '../document/build';
import type { Pin } from '../document/connector';
import type { Lead } from '../document/lead';
import { leadsOf } from '../document/lookup';
import type { Joint } from '../fit/joints';
import { parameterAt } from '../signals/parameters';
import { partKindOf } from '../signals/part-kinds';
import { STUBS } from '../signals/stubs';
import type { Corner } from './corner';
import type { Device, Netlist, NodeName } from './device';
import type { MachineState } from './machine-state';
import { partDevices } from './part-devices';
import { pinDevices, type ValueIn } from './pin-devices';

/** What a machine state can change about an element. */
export type Factor = 'power' | 'reset' | 'drive' | 'attached';

/** A pin, a wire or a part of a build: where it joins the circuit and what it is in each state. */
export interface Element {
  /** The name its devices' names begin with. */
  readonly id: string;
  readonly nodes: readonly NodeName[];
  readonly factors: readonly Factor[];
  readonly devices: (state: MachineState, corner: Corner) => readonly Device[];
}

export function pinNode(connector: string, pin: string): NodeName {
  return `pin.${connector}.${pin}`;
}

/** The node of a wire end or a part's terminal that lies on the lead's side. */
export function leadNode(lead: string, end: string): NodeName {
  return `lead.${lead}.${end}`;
}

export function partDeviceId(lead: string, part: string): string {
  return `part.${lead}.${part}`;
}

export function wireDeviceId(lead: string, index: number): string {
  return `wire.${lead}.${index}`;
}

/** Everything of a build that current can pass through, as far as a seated plug touches it. */
export function elementsOf(build: Build, joints: readonly Joint[]): readonly Element[] {
  const seated = new Map<NodeName, NodeName>();
  const pins = new Map<NodeName, Pin>();
  for (const { lead, plug, hole, connector, pin } of joints) {
    if (!pin) continue;
    const node = pinNode(connector.id, pin.pin);
    seated.set(leadNode(lead.id, `${plug.id}.${hole}`), node);
    pins.set(node, pin);
  }
  const touched = new Set(joints.map((joint) => joint.lead.id));
  return [
    ...[...pins].map(([node, pin]) => pinElement(node, pin)),
    ...leadsOf(build)
      .filter((lead) => touched.has(lead.id))
      .flatMap((lead) => leadElements(lead, seated)),
  ];
}

/** The whole build as one netlist, for a reference solver and for papers. */
export function netlistOf(elements: readonly Element[], state: MachineState, corner: Corner): Netlist {
  return elements.flatMap((element) => element.devices(state, corner));
}

function pinElement(node: NodeName, pin: Pin): Element {
  const stub = STUBS[pin.signal ?? 'unknown'];
  const stated = new Map(pin.values?.map(({ parameter, value }) => [parameter, value]));
  const busy = stub.some((element) => element.kind === 'pulls-low' && element.when === 'drive-busy');
  return {
    id: node,
    nodes: [node],
    factors: busy ? ['drive'] : [],
    devices: (state, corner) => {
      const valueIn: ValueIn = (id) => stated.get(id) ?? parameterAt(id, corner.board);
      return stub.flatMap((element, i) => pinDevices(element, `${node}#${i}`, node, state, valueIn));
    },
  };
}

function leadElements(lead: Lead, seated: ReadonlyMap<NodeName, NodeName>): readonly Element[] {
  const nodeAt = (end: string) => {
    const own = leadNode(lead.id, end);
    return seated.get(own) ?? own;
  };
  const wires = lead.wires.map((wire, i): Element => {
    const [a, b] = [nodeAt(wire.from), nodeAt(wire.to)];
    const id = wireDeviceId(lead.id, i);
    return {
      id,
      nodes: [a, b],
      factors: [],
      devices: (_, corner) => [{ id, kind: 'resistor', a, b, ohms: parameterAt('wire-ohms', corner.lead) }],
    };
  });
  const parts = lead.parts.map((part): Element => {
    const kind = partKindOf(part.kind);
    const node = (terminal: string) => leadNode(lead.id, `${part.id}.${terminal}`);
    const id = partDeviceId(lead.id, part.id);
    return {
      id,
      nodes: kind.terminals.map((terminal) => node(terminal.id)),
      factors: factorsOf(kind.job, kind.path),
      devices: (state, corner) => partDevices({ id, kind: part.kind, node, state, end: corner.lead }),
    };
  });
  return [...wires, ...parts];
}

function factorsOf(job: string, path: string): readonly Factor[] {
  if (job === 'power-switch') return ['power'];
  if (job === 'reset-switch') return ['reset'];
  return path === 'lines' ? ['attached'] : [];
}
