import { byIdentity } from '../base/by-identity';
import type { Build } from '../document/build';
import type { Connector, Pin } from '../document/connector';
import type { Lead } from '../document/lead';
import { leadsOf, type PinRef } from '../document/lookup';
import type { Unit } from '../document/unit';
import type { Joint } from '../fit/joints';
import { parameterAt, type RangeEnd } from '../signals/parameters';
import { partKindOf } from '../signals/part-kinds';
import type { PullCondition } from '../signals/stub';
import type { Corner } from './corner';
import type { Device, Netlist, NodeName } from './device';
import type { MachineState } from './machine-state';
import { partDevices } from './part-devices';
import { pinDevices, type ValueIn } from './pin-devices';
import { GIVES, type Standing, sharedName, standingOf, stubWhere } from './standing';

/** What a machine state can change about an element. */
export type Factor = 'power' | 'reset' | 'drive' | 'attached';

/** What of a build an element stands for. A wire is told by its place in the lead's list. */
export type Subject =
  | { readonly kind: 'pin'; readonly pin: PinRef }
  | { readonly kind: 'wire'; readonly lead: string; readonly wire: number }
  | { readonly kind: 'part'; readonly lead: string; readonly part: string };

/** A pin, a wire or a part of a build: where it joins the circuit and what it is in each state. */
export interface Element {
  /** The name its devices' names begin with. */
  readonly id: string;
  readonly subject: Subject;
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

/** The device of a pin's stub element by its place in the stub. */
export function stubDeviceId(pin: NodeName, index: number): string {
  return `${pin}#${index}`;
}

export function partDeviceId(lead: string, part: string): string {
  return `part.${lead}.${part}`;
}

export function wireDeviceId(lead: string, index: number): string {
  return `wire.${lead}.${index}`;
}

/** Whether what takes power from a supply is there, or the wires that lead to it end in the air. */
export type Loads = 'there' | 'away';

/** Everything of a build that current can pass through, as far as a seated plug touches it. */
export function elementsOf(
  build: Build,
  joints: readonly Joint[],
  loads: Loads = 'there',
): readonly Element[] {
  const pins = new Map<NodeName, Joint>();
  const byLead = new Map<Lead, Joint[]>();
  for (const joint of joints) {
    const { lead, connector, pin } = joint;
    if (pin) pins.set(pinNode(connector.id, pin.pin), joint);
    const known = byLead.get(lead);
    if (known) known.push(joint);
    else byLead.set(lead, [joint]);
  }
  return [
    ...[...pins.values()].flatMap(({ connector, pin }) => (pin ? [pinIn(build, connector, pin, loads)] : [])),
    ...leadsOf(build).flatMap((lead) => touchedLead({ lead, joints: byLead.get(lead) ?? [] })),
  ];
}

/** A pin as an element: the same one as long as nothing about it has changed. */
export function pinIn(build: Build, connector: Connector, pin: Pin, loads: Loads = 'there'): Element {
  const standing = standingOf(build, connector.id);
  return loads === 'away' && standing.kind === 'takes'
    ? barePin({ connector, pin })
    : pinKept({ connector, pin, standing });
}

interface PinOfConnector {
  readonly connector: Connector;
  readonly pin: Pin;
}

const pinKept = byIdentity(
  ({ connector, pin, standing }: PinOfConnector & { readonly standing: Standing }): Element =>
    standing.kind === 'joins'
      ? joinedPin(connector.id, pin, standing.unit)
      : pinElement(connector.id, pin, standing),
  ({ connector, pin, standing }) => [connector, pin, standing],
);

/** A pin with nothing behind it. */
const barePin = byIdentity(
  ({ connector, pin }: PinOfConnector): Element => ({
    id: pinNode(connector.id, pin.pin),
    subject: { kind: 'pin', pin: { connector: connector.id, pin: pin.pin } },
    nodes: [pinNode(connector.id, pin.pin)],
    factors: [],
    devices: () => [],
  }),
  ({ connector, pin }) => [connector, pin],
);

/** What a lead adds changes only with itself, its seats and the connectors they are on. */
const touchedLead = byIdentity(
  ({ lead, joints }: { readonly lead: Lead; readonly joints: readonly Joint[] }): readonly Element[] => {
    if (joints.length === 0) return [];
    const seated = new Map<NodeName, NodeName>();
    for (const { plug, hole, connector, pin } of joints) {
      if (pin) seated.set(leadNode(lead.id, `${plug.id}.${hole}`), pinNode(connector.id, pin.pin));
    }
    return leadElements(lead, seated);
  },
  ({ lead, joints }) => [lead, ...new Set(joints.flatMap(({ seat, connector }) => [seat, connector]))],
);

/** Elements as one netlist, in a state and at a corner. */
export function netlistOf(elements: readonly Element[], state: MachineState, corner: Corner): Netlist {
  return elements.flatMap((element) => element.devices(state, corner));
}

/** What of the machine's state, beside the supply, makes an output pull. */
const FELT_BY: Readonly<Partial<Record<PullCondition, Factor>>> = {
  'drive-busy': 'drive',
  'sockets-used': 'attached',
};

/** A pin of a hub: a piece of copper to all its other pins that carry the same. */
function joinedPin(connector: string, pin: Pin, unit: Unit): Element {
  const node = pinNode(connector, pin.pin);
  const name = sharedName(pin);
  const shared = name && `unit.${unit.id}.${name}`;
  return {
    id: node,
    subject: { kind: 'pin', pin: { connector, pin: pin.pin } },
    nodes: shared ? [node, shared] : [node],
    factors: [],
    devices: (_, { back }) =>
      shared
        ? [
            {
              id: stubDeviceId(node, 0),
              kind: 'resistor',
              a: node,
              b: shared,
              ohms: parameterAt('ground-ohms', back),
            },
          ]
        : [],
  };
}

/** A pin with what the board, a supply or a device holds behind it; of a board by itself where nothing is said. */
export function pinElement(connector: string, pin: Pin, standing: Standing = GIVES): Element {
  const node = pinNode(connector, pin.pin);
  const stub = stubWhere(pin, standing);
  const stated = new Map(pin.values?.map(({ parameter, value }) => [parameter, value]));
  return {
    id: node,
    subject: { kind: 'pin', pin: { connector, pin: pin.pin } },
    nodes: [node],
    factors: stub.flatMap((element) => (element.kind === 'pulls-low' && FELT_BY[element.when]) || []),
    devices: (state, corner) => {
      const valuesAt =
        (end: RangeEnd): ValueIn =>
        (id) =>
          stated.get(id) ?? parameterAt(id, end);
      return stub.flatMap((element, i) => {
        const feeds = element.kind === 'rail' || element.kind === 'fused-rail';
        const values = valuesAt(feeds ? corner.feed : corner.back);
        return pinDevices(element, stubDeviceId(node, i), node, state, values);
      });
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
      subject: { kind: 'wire', lead: lead.id, wire: i },
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
      subject: { kind: 'part', lead: lead.id, part: part.id },
      nodes: kind.terminals.map((terminal) => node(terminal.id)),
      factors: factorsOf(kind.job, kind.path),
      devices: (state, corner) => partDevices({ id, part, node, state, end: corner.lead }),
    };
  });
  return [...wires, ...parts];
}

function factorsOf(job: string, path: string): readonly Factor[] {
  if (job === 'power-switch') return ['power'];
  if (job === 'reset-switch') return ['reset'];
  return path === 'lines' ? ['attached'] : [];
}
