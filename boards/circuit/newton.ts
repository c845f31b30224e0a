import { junction, limitJunction } from './diode';
import type { Equations, Junction } from './equations';
import { solveDense } from './lu';

export const STEP_LIMIT = 120;

/** Leaks to the reference from every node: what a bench meter would add, far below any current that counts. */
export const REST_SIEMENS = 1e-12;

export interface Attempt {
  readonly solved: boolean;
  readonly values: Float64Array;
  readonly steps: number;
}

function across(values: Float64Array, { anode, cathode }: Junction): number {
  return (anode >= 0 ? (values[anode] ?? 0) : 0) - (cathode >= 0 ? (values[cathode] ?? 0) : 0);
}

/**
 * Newton's method on the junctions, each step a linear solve, with junction limiting (Nagel 1975).
 *
 * @param leakSiemens conductance across every junction and from every node to the reference
 * @param strength share of every source, 0 to 1
 */
export function newton(
  equations: Equations,
  start: Float64Array,
  leakSiemens: number,
  strength: number,
): Attempt {
  const { size, voltages, linear, sources, junctions } = equations;
  const matrix = new Float64Array(size * size);
  let values = start.slice();
  const last = Float64Array.from(junctions, (one) => across(values, one));
  for (let step = 1; step <= STEP_LIMIT; step += 1) {
    matrix.set(linear);
    const right = sources.map((value) => value * strength);
    for (let i = 0; i < voltages; i += 1) matrix[i * size + i] = (matrix[i * size + i] ?? 0) + leakSiemens;
    let limited = false;
    junctions.forEach((one, i) => {
      const wanted = across(values, one);
      const volts = limitJunction(one.model, one.knee, wanted, last[i] ?? 0);
      if (Math.abs(volts - wanted) > 1e-9) limited = true;
      last[i] = volts;
      stampJunction(matrix, right, size, one, volts, leakSiemens);
    });
    if (solveDense(matrix, right, size) >= 0) return { solved: false, values, steps: step };
    const done = !limited && settled(values, right, voltages);
    values = right;
    if (junctions.length === 0 || done) return { solved: values.every(Number.isFinite), values, steps: step };
  }
  return { solved: false, values, steps: STEP_LIMIT };
}

function stampJunction(
  matrix: Float64Array,
  right: Float64Array,
  size: number,
  { anode, cathode, model, knee }: Junction,
  volts: number,
  leakSiemens: number,
): void {
  const { amps, siemens } = junction(model, knee, volts);
  const slope = siemens + leakSiemens;
  const rest = amps + leakSiemens * volts - slope * volts;
  if (anode >= 0) {
    matrix[anode * size + anode] = (matrix[anode * size + anode] ?? 0) + slope;
    right[anode] = (right[anode] ?? 0) - rest;
  }
  if (cathode >= 0) {
    matrix[cathode * size + cathode] = (matrix[cathode * size + cathode] ?? 0) + slope;
    right[cathode] = (right[cathode] ?? 0) + rest;
  }
  if (anode >= 0 && cathode >= 0) {
    matrix[anode * size + cathode] = (matrix[anode * size + cathode] ?? 0) - slope;
    matrix[cathode * size + anode] = (matrix[cathode * size + anode] ?? 0) - slope;
  }
}

function settled(before: Float64Array, after: Float64Array, voltages: number): boolean {
  for (let i = 0; i < voltages; i += 1) {
    const [old, now] = [before[i] ?? 0, after[i] ?? 0];
    if (!(Math.abs(now - old) <= 1e-10 + 1e-10 * Math.max(Math.abs(now), Math.abs(old)))) return false;
  }
  return true;
}
