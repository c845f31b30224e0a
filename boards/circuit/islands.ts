import { type Device, GROUND, type Netlist, type NodeName } from './device';

/** Nodes that current can pass between, with the devices that join them. */
export interface Island {
  readonly nodes: readonly NodeName[];
  /** The node counted as 0 V: ground where the island has it, else its first node by name. */
  readonly reference: NodeName;
  readonly floating: boolean;
  readonly devices: readonly Device[];
}

/** Sets that can only grow together (union by find with path halving; Tarjan 1975). */
export class Groups {
  private readonly parents = new Map<string, string>();

  rootOf(name: string): string {
    let at = name;
    for (;;) {
      const parent = this.parents.get(at) ?? at;
      if (parent === at) {
        if (!this.parents.has(at)) this.parents.set(at, at);
        return at;
      }
      const grand = this.parents.get(parent) ?? parent;
      this.parents.set(at, grand);
      at = grand;
    }
  }

  /** Joins two sets; false when they were one already. */
  join(a: string, b: string): boolean {
    const [rootA, rootB] = [this.rootOf(a), this.rootOf(b)];
    if (rootA === rootB) return false;
    this.parents.set(rootA, rootB);
    return true;
  }
}

/** Whether a device lets current pass at all. A current source pushes, but joins nothing by itself. */
function conducts(device: Device): boolean {
  switch (device.kind) {
    case 'current':
      return false;
    case 'switch':
      return device.closed;
    case 'open-drain':
      return device.on;
    default:
      return true;
  }
}

export interface Partition {
  readonly islands: readonly Island[];
  /** Current sources whose current has no way back. */
  readonly stranded: readonly string[];
}

/**
 * Cuts a netlist where no current can pass, so that each piece is solved by itself. Ground does
 * not join: it is 0 V whatever flows, so pieces that meet only there know nothing of each other.
 */
export function partition(netlist: Netlist): Partition {
  const ways = new Groups();
  for (const device of netlist) if (conducts(device)) ways.join(device.a, device.b);
  const stranded = netlist
    .filter((device) => device.kind === 'current' && ways.rootOf(device.a) !== ways.rootOf(device.b))
    .map(({ id }) => id);
  const live = netlist.filter(
    (device) => conducts(device) || (device.kind === 'current' && !stranded.includes(device.id)),
  );

  const pieces = new Groups();
  for (const { a, b } of live) if (a !== GROUND && b !== GROUND) pieces.join(a, b);
  const members = new Map<string, { nodes: Set<NodeName>; devices: Device[] }>();
  const memberOf = (node: NodeName) => {
    const root = pieces.rootOf(node);
    const known = members.get(root);
    if (known) return known;
    const made = { nodes: new Set<NodeName>(), devices: [] };
    members.set(root, made);
    return made;
  };
  for (const { a, b } of netlist) for (const node of [a, b]) memberOf(node).nodes.add(node);
  for (const device of live) memberOf(device.a === GROUND ? device.b : device.a).devices.push(device);

  const ground = ways.rootOf(GROUND);
  const islands = [...members.values()].map(({ nodes, devices }): Island => {
    const names = [...nodes].sort();
    const first = names[0] ?? GROUND;
    const floating = ways.rootOf(first) !== ground;
    return { nodes: names, reference: floating ? first : GROUND, floating, devices };
  });
  return { islands, stranded };
}
