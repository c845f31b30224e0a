import type { Volts } from '../../base/units';
import type { Build } from '../../document/build';
import type { PinRef } from '../../document/lookup';
import { surroundings } from '../around';
import { USUAL } from '../corner';
import type { MachineState } from '../machine-state';

/** The usual level of a pin against ground, wired or bare; undefined where it hangs in the air. */
export function pinVolts(build: Build, pin: PinRef, state: MachineState): Volts | undefined {
  const around = surroundings(build, { kind: 'pin', pin }, state, USUAL);
  if (!around || around.solution.floating.has(around.element.id)) return undefined;
  return around.solution.volts.get(around.element.id);
}
