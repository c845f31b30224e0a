import type { Amps, Ohms } from '../base/units';
import type { Device, NodeName } from './device';
import { type JunctionLaw, lawOf } from './diode';
import type { IdealBranch } from './ideal-branches';
import type { Island } from './islands';

/** A junction between two unknowns; -1 is the reference. */
export interface Junction {
  readonly id: string;
  readonly anode: number;
  readonly cathode: number;
  readonly law: JunctionLaw;
}

/**
 * The equations of one island by modified nodal analysis (Ho, Ruehli and Brennan, 1975): unknowns
 * are the node voltages, then one more node for each diode with series resistance, then the
 * currents of the ideal branches. Everything linear is stamped once; junctions at each step.
 */
export interface Equations {
  readonly size: number;
  /** How many of the unknowns are voltages. */
  readonly voltages: number;
  readonly linear: Float64Array;
  /** Right side of sources at full strength. */
  readonly sources: Float64Array;
  readonly junctions: readonly Junction[];
  readonly indexOf: (node: NodeName) => number;
  readonly branchIndex: ReadonlyMap<string, number>;
}

/** The resistance of a device that is nothing but one, given which fuses have tripped. */
export function plainOhms(device: Device, tripped: ReadonlySet<string>): Ohms | undefined {
  switch (device.kind) {
    case 'resistor':
      return device.ohms;
    case 'open-drain':
      return device.onOhms;
    case 'fuse':
      return tripped.has(device.id) ? device.trippedOhms : device.coldOhms;
    default:
      return undefined;
  }
}

export function writeEquations(
  island: Island,
  branches: readonly IdealBranch[],
  tripped: ReadonlySet<string>,
): Equations {
  const index = new Map<NodeName, number>();
  for (const node of island.nodes) if (node !== island.reference) index.set(node, index.size);
  const indexOf = (node: NodeName) => index.get(node) ?? -1;

  let voltages = index.size;
  const junctions = island.devices.flatMap((device) => {
    if (device.kind !== 'diode') return [];
    const anode = device.model.seriesOhms > 0 ? voltages++ : indexOf(device.a);
    const { id, model } = device;
    const [outer, cathode] = [indexOf(device.a), indexOf(device.b)];
    return [{ id, law: lawOf(model), anode, cathode, outer, seriesOhms: model.seriesOhms }];
  });
  const branchIndex = new Map(branches.map((branch, i) => [branch.id, voltages + i]));
  const size = voltages + branches.length;
  const linear = new Float64Array(size * size);
  const sources = new Float64Array(size);
  const add = (row: number, col: number, value: number) => {
    if (row >= 0 && col >= 0) linear[row * size + col] = (linear[row * size + col] ?? 0) + value;
  };
  const conductance = (a: number, b: number, siemens: number) => {
    add(a, a, siemens);
    add(b, b, siemens);
    add(a, b, -siemens);
    add(b, a, -siemens);
  };
  const inject = (from: number, to: number, amps: Amps) => {
    if (from >= 0) sources[from] = (sources[from] ?? 0) - amps;
    if (to >= 0) sources[to] = (sources[to] ?? 0) + amps;
  };

  for (const device of island.devices) {
    const [a, b] = [indexOf(device.a), indexOf(device.b)];
    const ohms = plainOhms(device, tripped);
    if (ohms !== undefined) conductance(a, b, 1 / ohms);
    else if (device.kind === 'current') inject(a, b, device.amps);
    else if (device.kind === 'voltage' && device.ohms > 0) {
      conductance(a, b, 1 / device.ohms);
      inject(b, a, device.volts / device.ohms);
    }
  }
  for (const { outer, anode, seriesOhms } of junctions) {
    if (seriesOhms > 0) conductance(outer, anode, 1 / seriesOhms);
  }
  for (const branch of branches) {
    const row = branchIndex.get(branch.id) ?? -1;
    const [a, b] = [indexOf(branch.a), indexOf(branch.b)];
    add(a, row, 1);
    add(b, row, -1);
    add(row, a, 1);
    add(row, b, -1);
    sources[row] = branch.volts;
  }
  return { size, voltages, linear, sources, junctions, indexOf, branchIndex };
}
