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

/** Current sources whose current has no way back. */
export interface Partition {
  readonly islands: readonly Island[];
  readonly stranded: readonly string[];
}

/** Cuts a netlist where no current can pass, so that each piece is solved by itself. */
export function partition(netlist: Netlist): Partition {
  const groups = new Groups();
  for (const device of netlist) {
    groups.rootOf(device.a);
    groups.rootOf(device.b);
    if (conducts(device)) groups.join(device.a, device.b);
  }
  const nodes = new Map<string, Set<NodeName>>();
  const devices = new Map<string, Device[]>();
  const stranded: string[] = [];
  for (const device of netlist) {
    for (const node of [device.a, device.b]) {
      const root = groups.rootOf(node);
      const known = nodes.get(root);
      if (known) known.add(node);
      else nodes.set(root, new Set([node]));
    }
    const [rootA, rootB] = [groups.rootOf(device.a), groups.rootOf(device.b)];
    if (device.kind === 'current' && rootA !== rootB) stranded.push(device.id);
    else if (conducts(device) || device.kind === 'current') {
      const known = devices.get(rootA);
      if (known) known.push(device);
      else devices.set(rootA, [device]);
    }
  }
  const islands = [...nodes].map(([root, members]) => {
    const names = [...members].sort();
    const floating = !members.has(GROUND);
    return {
      nodes: names,
      reference: floating ? (names[0] ?? GROUND) : GROUND,
      floating,
      devices: devices.get(root) ?? [],
    };
  });
  return { islands, stranded };
}
