import { byIdentity } from '../base/by-identity';
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

/** What a model says of its junction, worked out once. */
export interface JunctionLaw {
  readonly saturationAmps: Amps;
  /** n·kT/q: over this the current grows by e. */
  readonly slopeVolts: Volts;
  /** Above this the exponential runs away from Newton's tangent. */
  readonly criticalVolts: Volts;
  /** Backwards beyond this the reverse exponential takes over; infinite where there is no limit. */
  readonly kneeVolts: Volts;
}

export const lawOf = byIdentity(
  ({ saturationAmps, ideality, reverseLimitVolts }: DiodeModel): JunctionLaw => {
    const slopeVolts = ideality * THERMAL_VOLTS;
    return {
      saturationAmps,
      slopeVolts,
      criticalVolts: slopeVolts * Math.log(slopeVolts / (Math.SQRT2 * saturationAmps)),
      kneeVolts: kneeOf(reverseLimitVolts ?? Number.POSITIVE_INFINITY, saturationAmps, slopeVolts),
    };
  },
);

/**
 * Where the reverse exponential has to begin for the stated limit current to flow at the stated
 * limit voltage (Nagel, SPICE2, ERL-M520, 1975: diode model).
 */
function kneeOf(limitVolts: Volts, saturationAmps: Amps, slopeVolts: Volts): Volts {
  if (limitVolts === Number.POSITIVE_INFINITY) return limitVolts;
  let knee = limitVolts - slopeVolts * Math.log(1 + LIMIT_AMPS / saturationAmps);
  for (let turn = 0; turn < 25; turn += 1) {
    knee = limitVolts - slopeVolts * Math.log(LIMIT_AMPS / saturationAmps + 1 - knee / slopeVolts);
  }
  return knee;
}

/**
 * Current and slope of the junction alone (without its series resistance), with the cubic that
 * keeps the reverse side smooth (same source).
 */
export function junction({ saturationAmps, slopeVolts, kneeVolts }: JunctionLaw, volts: Volts): Branch {
  if (volts >= -3 * slopeVolts) {
    const grown = Math.exp(volts / slopeVolts);
    return { amps: saturationAmps * (grown - 1), siemens: (saturationAmps * grown) / slopeVolts };
  }
  if (volts >= -kneeVolts) {
    const cube = ((3 * slopeVolts) / (volts * Math.E)) ** 3;
    return { amps: -saturationAmps * (1 + cube), siemens: (saturationAmps * 3 * cube) / volts };
  }
  const grown = Math.exp(-(kneeVolts + volts) / slopeVolts);
  return { amps: -saturationAmps * grown, siemens: (saturationAmps * grown) / slopeVolts };
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
export function limitJunction(law: JunctionLaw, next: Volts, last: Volts): Volts {
  const { slopeVolts, criticalVolts, kneeVolts } = law;
  if (next >= Math.min(0, 10 * slopeVolts - kneeVolts)) {
    return limitForward(next, last, slopeVolts, criticalVolts);
  }
  return -(limitForward(-(next + kneeVolts), -(last + kneeVolts), slopeVolts, criticalVolts) + kneeVolts);
}
