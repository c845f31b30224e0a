import type { Volts } from '../base/units';
import type { Device, NodeName } from './device';
import type { CircuitProblem } from './problem';

/** A branch that fixes the voltage between two nodes whatever current flows. */
export interface IdealBranch {
  readonly id: string;
  readonly a: NodeName;
  readonly b: NodeName;
  readonly volts: Volts;
}

function idealBranch(device: Device): IdealBranch | undefined {
  if (device.kind === 'switch' && device.closed) return { id: device.id, a: device.a, b: device.b, volts: 0 };
  if (device.kind === 'voltage' && device.ohms === 0) return device;
  return undefined;
}

interface Step {
  readonly to: NodeName;
  readonly volts: Volts;
  readonly id: string;
}

/**
 * A spanning forest of the ideal branches. A branch that closes a loop would make the equations
 * singular: it is left out and named, as a clash when the loop's voltages do not add up to zero.
 */
export function spanIdealBranches(devices: readonly Device[]): {
  readonly kept: readonly IdealBranch[];
  readonly problems: readonly CircuitProblem[];
} {
  const steps = new Map<NodeName, Step[]>();
  const kept: IdealBranch[] = [];
  const problems: CircuitProblem[] = [];
  for (const device of devices) {
    const branch = idealBranch(device);
    if (!branch) continue;
    const way = wayBetween(steps, branch.b, branch.a);
    if (!way) {
      kept.push(branch);
      addStep(steps, branch.b, { to: branch.a, volts: branch.volts, id: branch.id });
      addStep(steps, branch.a, { to: branch.b, volts: -branch.volts, id: branch.id });
      continue;
    }
    const agrees = Math.abs(way.volts - branch.volts) < 1e-9;
    problems.push({
      code: agrees ? 'current-undetermined' : 'sources-fight',
      device: branch.id,
      with: way.ids,
    });
  }
  return { kept, problems };
}

function addStep(steps: Map<NodeName, Step[]>, from: NodeName, step: Step): void {
  const known = steps.get(from);
  if (known) known.push(step);
  else steps.set(from, [step]);
}

/** The voltage rise along kept branches from one node to another, by breadth-first search. */
function wayBetween(
  steps: ReadonlyMap<NodeName, readonly Step[]>,
  from: NodeName,
  to: NodeName,
): { readonly volts: Volts; readonly ids: readonly string[] } | undefined {
  const found = new Map<NodeName, { volts: Volts; ids: readonly string[] }>([[from, { volts: 0, ids: [] }]]);
  const waiting = [from];
  for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
    const here = found.get(at);
    if (!here || at === to) return here;
    for (const step of steps.get(at) ?? []) {
      if (found.has(step.to)) continue;
      found.set(step.to, { volts: here.volts + step.volts, ids: [...here.ids, step.id] });
      waiting.push(step.to);
    }
  }
  return undefined;
}
