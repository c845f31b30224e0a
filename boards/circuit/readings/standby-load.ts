import type { Amps } from '../../base/units';
import type { SignalId } from '../../signals/signals';
import { STUBS } from '../../signals/stubs';
import type { Circuit } from '../circuit';
import { USUAL } from '../corner';
import { pinNode } from '../elements';
import { RESTING } from '../machine-state';

/** What one port may draw by its standard: 500 mA for USB 2.0, 900 mA for USB 3 (read in secondary). */
const PORT_AMPS: Readonly<Partial<Record<SignalId, Amps>>> = {
  'usb-vbus': 0.5,
  'usb3-vbus': 0.9,
  'usbc-vbus': 0.9,
};

/** Rating of +5 V standby that the ATX 3.0 design guide (336521) recommends. */
export const STANDBY_MOST_AMPS: Amps = 3;

/** A supply pin of a socket at the front. */
interface SuppliedPin {
  readonly connector: string;
  readonly pin: string;
  readonly signal: SignalId;
}

/** What full sockets would draw from the standby rail while the machine is off: those that are live then. */
export function standbyLoad(
  circuit: Circuit,
  pins: readonly SuppliedPin[],
): { readonly amps: Amps; readonly ports: number } {
  const live = pins.filter(({ connector, pin, signal }) => {
    const standby = STUBS[signal].some((one) => 'rail' in one && one.rail === 'standby-5v');
    return standby && (circuit.volts(pinNode(connector, pin), RESTING, USUAL) ?? 0) > 1;
  });
  return { amps: live.reduce((sum, { signal }) => sum + (PORT_AMPS[signal] ?? 0), 0), ports: live.length };
}
