import type { Amps } from '../../base/units';
import type { SignalId } from '../../signals/signals';
import { hasWakeJumper } from '../../signals/stub-of';
import type { Circuit } from '../circuit';
import { USUAL } from '../corner';
import { pinNode } from '../elements';
import { RESTING } from '../machine-state';

/** What one port may draw by its standard: one unit load unasked, more once it is granted (read in secondary). */
const PORT_AMPS: Readonly<Partial<Record<SignalId, { readonly unit: Amps; readonly full: Amps }>>> = {
  'usb-vbus': { unit: 0.1, full: 0.5 },
  'usb3-vbus': { unit: 0.15, full: 0.9 },
  'usbc-vbus': { unit: 0.15, full: 0.9 },
};

/** Rating of +5 V standby that the ATX 3.0 design guide (336521) recommends. */
export const STANDBY_MOST_AMPS: Amps = 3;

/** The minimum of +5 V standby in an older supply design guide, v0.9 (read in secondary). */
export const STANDBY_OLD_AMPS: Amps = 0.72;

/** A supply pin of a socket at the front; one socket may have several. */
interface SuppliedPin {
  /** The same for all pins of one socket. */
  readonly port: string;
  readonly connector: string;
  readonly pin: string;
  readonly signal: SignalId;
}

/** What all the sockets that are live while the machine is off would draw from the standby rail. */
export interface StandbyLoad {
  readonly ports: number;
  /** With a unit load in each. */
  readonly leastAmps: Amps;
  /** With as much in each as its standard allows. */
  readonly amps: Amps;
}

/**
 * The load of the standby rail by front sockets: a supply pin counts where the solver finds it live, so
 * that one whose wake jumper lies on the main supply does not.
 */
export function standbyLoad(circuit: Circuit, pins: readonly SuppliedPin[]): StandbyLoad {
  const live = pins.filter(
    ({ connector, pin, signal }) =>
      hasWakeJumper(signal) && (circuit.volts(pinNode(connector, pin), RESTING, USUAL) ?? 0) > 1,
  );
  // A Type-C socket has its supply on three pins, and takes no more for it.
  const ports = [...new Map(live.map((each) => [each.port, each])).values()];
  const sum = (load: 'unit' | 'full') =>
    ports.reduce((amps, { signal }) => amps + (PORT_AMPS[signal]?.[load] ?? 0), 0);
  return { ports: ports.length, leastAmps: sum('unit'), amps: sum('full') };
}
