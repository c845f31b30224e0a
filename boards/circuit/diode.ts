import type { Amps, Volts } from '../base/units';
import type { DiodeModel } from './device';

/** k·T/q at 27 °C, the usual reference temperature of circuit simulation; k and q are exact SI values. */
export const THERMAL_VOLTS: Volts = (1.380649e-23 * 300.15) / 1.602176634e-19;

/** A current and its slope at a voltage. */
export interface Branch {
  readonly amps: Amps;
  readonly siemens: number;
}

/** The current at which the reverse limit is stated. */
const LIMIT_AMPS: Amps = 1e-3;

/**
 * The voltage where the reverse exponential takes over, chosen so that the stated limit current
 * flows at the stated limit voltage (Nagel, SPICE2, ERL-M520, 1975: diode model).
 */
export function reverseKnee(model: DiodeModel): Volts | undefined {
  const known = knees.get(model);
  if (known !== undefined) return known;
  const knee = kneeOf(model);
  if (knee !== undefined) knees.set(model, knee);
  return knee;
}

const knees = new WeakMap<DiodeModel, Volts>();

function kneeOf(model: DiodeModel): Volts | undefined {
  const limit = model.reverseLimitVolts;
  if (limit === undefined) return undefined;
  const slopeVolts = model.ideality * THERMAL_VOLTS;
  let knee = limit - slopeVolts * Math.log(1 + LIMIT_AMPS / model.saturationAmps);
  for (let turn = 0; turn < 25; turn += 1) {
    knee = limit - slopeVolts * Math.log(LIMIT_AMPS / model.saturationAmps + 1 - knee / slopeVolts);
  }
  return knee;
}

/**
 * Current and slope of the junction alone (without its series resistance), with the cubic that
 * keeps the reverse side smooth (same source).
 */
export function junction(model: DiodeModel, knee: Volts | undefined, volts: Volts): Branch {
  const slopeVolts = model.ideality * THERMAL_VOLTS;
  const { saturationAmps } = model;
  if (volts >= -3 * slopeVolts) {
    const grown = Math.exp(volts / slopeVolts);
    return { amps: saturationAmps * (grown - 1), siemens: (saturationAmps * grown) / slopeVolts };
  }
  if (knee === undefined || volts >= -knee) {
    const cube = ((3 * slopeVolts) / (volts * Math.E)) ** 3;
    return { amps: -saturationAmps * (1 + cube), siemens: (saturationAmps * 3 * cube) / volts };
  }
  const grown = Math.exp(-(knee + volts) / slopeVolts);
  return { amps: -saturationAmps * grown, siemens: (saturationAmps * grown) / slopeVolts };
}

/** Above this a junction's exponential runs away from Newton's tangent. */
function criticalVolts(model: DiodeModel): Volts {
  const slopeVolts = model.ideality * THERMAL_VOLTS;
  return slopeVolts * Math.log(slopeVolts / (Math.SQRT2 * model.saturationAmps));
}

/** Nagel's junction limiting: a step up the exponential is taken on a logarithmic scale. */
function limitForward(next: Volts, last: Volts, slopeVolts: Volts, critical: Volts): Volts {
  if (next <= critical || Math.abs(next - last) <= 2 * slopeVolts) return next;
  if (last > 0) {
    const step = 1 + (next - last) / slopeVolts;
    return step > 0 ? last + slopeVolts * Math.log(step) : critical;
  }
  return slopeVolts * Math.log(next / slopeVolts);
}

/** The voltage to linearise at, given the last one and where Newton would go. */
export function limitJunction(model: DiodeModel, knee: Volts | undefined, next: Volts, last: Volts): Volts {
  const slopeVolts = model.ideality * THERMAL_VOLTS;
  const critical = criticalVolts(model);
  if (knee === undefined || next >= Math.min(0, 10 * slopeVolts - knee)) {
    return limitForward(next, last, slopeVolts, critical);
  }
  return -(limitForward(-(next + knee), -(last + knee), slopeVolts, critical) + knee);
}
