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
  const pieces = new Groups();
  const touching: NodeName[] = [];
  for (const device of netlist) {
    if (!conducts(device)) continue;
    const { a, b } = device;
    if (a !== GROUND && b !== GROUND) pieces.join(a, b);
    else touching.push(a === GROUND ? b : a);
  }
  const grounded = new Set(touching.map((node) => pieces.rootOf(node)));
  const isGrounded = (node: NodeName) => node === GROUND || grounded.has(pieces.rootOf(node));

  const pushing = netlist.filter(({ kind }) => kind === 'current');
  const stranded = new Set(
    pushing.filter(({ a, b }) => !(isGrounded(a) && isGrounded(b)) && pieces.rootOf(a) !== pieces.rootOf(b)),
  );
  for (const device of pushing) {
    const { a, b } = device;
    if (!stranded.has(device) && a !== GROUND && b !== GROUND) pieces.join(a, b);
  }
  const live = netlist.filter(
    (device) => conducts(device) || (device.kind === 'current' && !stranded.has(device)),
  );
  const roots = new Set(touching.map((node) => pieces.rootOf(node)));
  return {
    islands: islandsOf(netlist, live, pieces, (root) => roots.has(root)),
    stranded: [...stranded].map(({ id }) => id),
  };
}

/** The pieces with their nodes and devices. Ground alone is none: there is nothing to solve. */
function islandsOf(
  netlist: Netlist,
  live: readonly Device[],
  pieces: Groups,
  isGrounded: (root: NodeName) => boolean,
): readonly Island[] {
  const members = new Map<NodeName, { nodes: Set<NodeName>; devices: Device[] }>();
  const memberOf = (node: NodeName) => {
    const root = pieces.rootOf(node);
    const known = members.get(root);
    if (known) return known;
    const made = { nodes: new Set<NodeName>(), devices: [] };
    members.set(root, made);
    return made;
  };
  for (const { a, b } of netlist) {
    if (a !== GROUND) memberOf(a).nodes.add(a);
    if (b !== GROUND) memberOf(b).nodes.add(b);
  }
  for (const device of live) memberOf(device.a === GROUND ? device.b : device.a).devices.push(device);
  return [...members].map(([root, { nodes, devices }]): Island => {
    const names = [...nodes].sort();
    const floating = root !== GROUND && !isGrounded(root);
    return { nodes: names, reference: floating ? (names[0] ?? GROUND) : GROUND, floating, devices };
  });
}
