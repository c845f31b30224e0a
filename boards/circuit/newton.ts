import type { Volts } from '../base/units';
import { type JunctionLaw, junction, limitJunction } from './diode';
import type { Equations, Junction } from './equations';
import { solveDense } from './lu';

const STEP_LIMIT = 120;

/** Leaks to the reference from every node: what a bench meter would add, far below any current that counts. */
export const REST_SIEMENS = 1e-15;

/**
 * A junction that moves less than this between steps, in volts and as a share, is at rest: the
 * step after squares what is left, and rounding in the linear solve is not much smaller.
 */
const STILL_VOLTS = 1e-9;

/** Nor does it count how the voltage of a junction wanders while its current is what the tangent foresaw. */
const STILL_AMPS = 1e-13;

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
 * It is done when no junction moves: everything else is linear, and follows exactly.
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
  const last = Float64Array.from(junctions, (one) => across(start, one));
  let before = new Float64Array(size);
  let values = Float64Array.from(start);
  for (let step = 1; step <= STEP_LIMIT; step += 1) {
    [before, values] = [values, before];
    matrix.set(linear);
    for (let i = 0; i < size; i += 1) values[i] = (sources[i] ?? 0) * strength;
    for (let i = 0; i < voltages; i += 1) matrix[i * size + i] = (matrix[i * size + i] ?? 0) + leakSiemens;
    for (let i = 0; i < junctions.length; i += 1) {
      const one = junctions[i];
      if (one) stampJunction(matrix, values, size, one, last[i] ?? 0, leakSiemens);
    }
    if (solveDense(matrix, values, size) >= 0) return { solved: false, values: before, steps: step };
    let moved = false;
    for (let i = 0; i < junctions.length; i += 1) {
      const one = junctions[i];
      if (!one) continue;
      const wanted = across(values, one);
      const old = last[i] ?? 0;
      moved ||= !isStill(one.law, wanted, old);
      last[i] = limitJunction(one.law, wanted, old);
    }
    if (!moved) return { solved: values.every(Number.isFinite), values, steps: step };
  }
  return { solved: false, values, steps: STEP_LIMIT };
}

function isStill(law: JunctionLaw, wanted: Volts, old: Volts): boolean {
  if (Math.abs(wanted - old) <= STILL_VOLTS * (1 + Math.abs(old))) return true;
  const tangent = junction(law, old);
  const foreseen = tangent.amps + tangent.siemens * (wanted - old);
  return Math.abs(junction(law, wanted).amps - foreseen) <= STILL_AMPS;
}

function stampJunction(
  matrix: Float64Array,
  right: Float64Array,
  size: number,
  { anode, cathode, law }: Junction,
  volts: number,
  leakSiemens: number,
): void {
  const { amps, siemens } = junction(law, volts);
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
