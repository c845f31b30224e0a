import { RESTING, RUNNING } from '../../circuit/machine-state';
import { arrivalAt } from '../../circuit/readings/arrivals';
import { standingOf } from '../../circuit/standing';
import type { Build } from '../../document/build';
import type { PinRef } from '../../document/lookup';
import { pinsOf } from './names';
import { voltsExactText } from './numbers';

/**
 * What the wires bring to a pin that takes power: "+12 V from pin 3 of DRIVES 1 of Birch". Empty for a pin that
 * takes none; "nothing" where no wire leads to anything that gives.
 */
export function arrivalWords(build: Build, pin: PinRef): string {
  if (standingOf(build, pin.connector).kind !== 'takes') return '';
  const { from, volts } = arrivalAt(build, pin);
  if (from.length === 0) return 'nothing';
  const [standby, running] = [volts(RESTING)?.usual ?? 0, volts(RUNNING)?.usual ?? 0];
  const most = Math.abs(standby) > Math.abs(running) ? standby : running;
  const level = Math.abs(most) < 0.05 ? 'ground' : `${most > 0 ? '+' : ''}${voltsExactText(most)}`;
  return `${level} from ${pinsOf(build, from)}`;
}
