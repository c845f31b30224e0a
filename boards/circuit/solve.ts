import type { Amps, Volts } from '../base/units';
import { type Device, GROUND, type Netlist, type NodeName } from './device';
import { junction } from './diode';
import { type Equations, plainOhms, writeEquations } from './equations';
import { spanIdealBranches } from './ideal-branches';
import { type Island, partition } from './islands';
import type { CircuitProblem } from './problem';
import { operatingPoint } from './solve-island';

/** Voltages and currents of a netlist at rest. */
export interface Solution {
  /** Against ground, or within a floating island against its first node; undefined for an unknown name. */
  readonly volts: ReadonlyMap<NodeName, Volts>;
  /** From a to b through each device; 0 where none can flow. */
  readonly amps: ReadonlyMap<string, Amps>;
  /** Nodes whose island has no way to ground: their voltages only count against each other. */
  readonly floating: ReadonlySet<NodeName>;
  readonly tripped: ReadonlySet<string>;
  readonly problems: readonly CircuitProblem[];
}

interface IslandSolution {
  readonly volts: ReadonlyMap<NodeName, Volts>;
  readonly amps: ReadonlyMap<string, Amps>;
  readonly tripped: ReadonlySet<string>;
  readonly problems: readonly CircuitProblem[];
}

/** The direct-current operating point of any netlist. Never throws: what cannot be is named in `problems`. */
export function solve(netlist: Netlist): Solution {
  const { islands, stranded } = partition(netlist);
  const volts = new Map<NodeName, Volts>([[GROUND, 0]]);
  const amps = new Map<string, Amps>(netlist.map((device) => [device.id, 0]));
  const floating = new Set<NodeName>();
  const tripped = new Set<string>();
  const problems: CircuitProblem[] = stranded.map((device) => ({ code: 'no-way-back', device }));
  for (const island of islands) {
    const solution = solveIsland(island);
    for (const [node, value] of solution.volts) volts.set(node, value);
    for (const [device, value] of solution.amps) amps.set(device, value);
    for (const fuse of solution.tripped) tripped.add(fuse);
    if (island.floating) for (const node of island.nodes) floating.add(node);
    problems.push(...solution.problems);
  }
  return { volts, amps, floating, tripped, problems };
}

/** Solves, trips every fuse that carries too much, and solves again: a tripped fuse stays tripped. */
function solveIsland(island: Island): IslandSolution {
  const tripped = new Set<string>();
  for (;;) {
    const solution = solveWithFuses(island, tripped);
    const blown = island.devices.filter(
      (device) =>
        device.kind === 'fuse' &&
        !tripped.has(device.id) &&
        Math.abs(solution.amps.get(device.id) ?? 0) > device.tripAmps,
    );
    if (blown.length === 0) return solution;
    for (const fuse of blown) tripped.add(fuse.id);
  }
}

function solveWithFuses(island: Island, tripped: ReadonlySet<string>): IslandSolution {
  const { kept, problems } = spanIdealBranches(island.devices);
  const equations = writeEquations(island, kept, tripped);
  const attempt = operatingPoint(equations);
  const gaveUp: CircuitProblem[] = attempt.solved
    ? []
    : [{ code: 'gave-up', nodes: island.nodes, steps: attempt.steps }];
  const valueAt = (index: number) => (index < 0 ? 0 : (attempt.values[index] ?? 0));
  return {
    volts: new Map(island.nodes.map((node) => [node, valueAt(equations.indexOf(node))])),
    amps: new Map(
      island.devices.map((device) => [device.id, ampsThrough(device, equations, valueAt, tripped)]),
    ),
    tripped: new Set(tripped),
    problems: [...problems, ...gaveUp],
  };
}

function ampsThrough(
  device: Device,
  equations: Equations,
  valueAt: (index: number) => number,
  tripped: ReadonlySet<string>,
): Amps {
  const drop = valueAt(equations.indexOf(device.a)) - valueAt(equations.indexOf(device.b));
  const ohms = plainOhms(device, tripped);
  if (ohms !== undefined) return drop / ohms;
  switch (device.kind) {
    case 'current':
      return device.amps;
    case 'diode': {
      const one = equations.junctions.find(({ id }) => id === device.id);
      if (!one) return 0;
      return junction(one.law, valueAt(one.anode) - valueAt(one.cathode)).amps;
    }
    case 'voltage':
      return device.ohms > 0
        ? (drop - device.volts) / device.ohms
        : valueAt(equations.branchIndex.get(device.id) ?? -1);
    default:
      return valueAt(equations.branchIndex.get(device.id) ?? -1);
  }
}
