import { byIdentity } from '../../../base/by-identity';
import { grouped } from '../../../base/grouped';
import type { Volts } from '../../../base/units';
import { Groups } from '../../../circuit/islands';
import { sharedName, standingOf } from '../../../circuit/standing';
import type { Build } from '../../../document/build';
import type { Connector, Pin } from '../../../document/connector';
import { splitEnd } from '../../../document/lead';
import { connectorsOf, leadsOf, unitWith } from '../../../document/lookup';
import { powerJobOf } from '../../../document/power-job';
import { type Fed, fedBy } from '../../../findings/fed-pins';
import { type Joint, jointsOf } from '../../../fit/joints';
import { wiringOf } from '../../../fit/seated-plug';
import type { Job } from '../../../signals/signal';
import { type SignalId, signalOf } from '../../../signals/signals';

/** A pin that takes power, and what the wires bring to it from what gives. */
interface InletPin {
  readonly signal: SignalId;
  readonly given: readonly SignalId[];
  readonly fed: Fed;
}

/** A connector of the board or of a device that takes power. */
export interface InletFeed {
  readonly connector: Connector;
  readonly job: Job;
  readonly pins: readonly InletPin[];
}

/** Whether a connector is a device's own way in for power; what a hub takes it hands on. */
export function isInlet(build: Build, connector: Connector): boolean {
  const kind = unitWith(build, connector.id)?.kind;
  return kind !== 'supply' && kind !== 'hub' && powerJobOf(connector) !== undefined;
}

/**
 * What the wires bring to every inlet. The rules ask the circuit the same of a machine as it is; here rails are
 * what they are called, so that hundreds of wrong cables cost what one circuit does.
 */
export const feedOf = byIdentity((build: Build): readonly InletFeed[] => {
  const joined = joinedIn(build);
  const joints = jointsOf(build).filter(({ pin }) => pin !== undefined);
  const given = grouped(
    joints.filter(({ connector }) => gives(build, connector)),
    (joint) => joined(placeOf(build, joint)),
  );
  return inletsOf(build).map((connector): InletFeed => {
    const pins = connector.pins.filter(({ missing }) => missing !== true);
    return {
      connector,
      job: powerJobOf(connector) ?? 'drive-power',
      pins: pins.map((pin) => {
        const from = given.get(joined(pinPlace(build, connector, pin))) ?? [];
        return pinFed(pin, [...new Set(from.map((joint) => joint.pin?.signal ?? 'unknown'))]);
      }),
    };
  });
}, wiringOf);

/** An outlet, or a header of the board: what is joined to a fan header gets what that has. */
function gives(build: Build, connector: Connector): boolean {
  return standingOf(build, connector.id).kind === 'gives' && !isInlet(build, connector);
}

function inletsOf(build: Build): readonly Connector[] {
  return connectorsOf(build).filter((connector) => isInlet(build, connector));
}

function pinFed({ signal = 'unknown' }: Pin, given: readonly SignalId[]): InletPin {
  const volts = railVolts(given);
  // Two rails on one wire, or a rail and ground: whatever the pin is, the supply is shorted there.
  const fed = volts.size > 1 ? 'short' : fedBy(signal, given, [...volts][0] ?? 0);
  return { signal, given, fed };
}

/** What the rails and grounds among some signals are at. A line has no voltage of its own: it yields to either. */
export function railVolts(signals: readonly SignalId[]): ReadonlySet<Volts> {
  return new Set(
    signals.map(signalOf).flatMap(({ nature, volts = 0 }) => {
      return nature === 'supply' || nature === 'ground' ? [volts] : [];
    }),
  );
}

/** Where a contact is: the pin that it touches. Pins of a hub that carry the same are one. */
function placeOf(build: Build, { connector, pin }: Joint): string {
  return pin ? pinPlace(build, connector, pin) : '';
}

function pinPlace(build: Build, connector: Connector, pin: Pin): string {
  const unit = unitWith(build, connector.id);
  const shared = unit?.kind === 'hub' ? sharedName(pin) : undefined;
  return shared === undefined ? `pin ${connector.id} ${pin.pin}` : `hub ${unit?.id} ${shared}`;
}

/** The name that all places share that wires join. */
function joinedIn(build: Build): (place: string) => string {
  const groups = new Groups();
  for (const { id, wires, parts } of leadsOf(build)) {
    const inside = new Set(parts.map((part) => part.id));
    for (const { from, to } of wires)
      if (![from, to].some((end) => inside.has(splitEnd(end).owner)))
        groups.join(`${id} ${from}`, `${id} ${to}`);
  }
  for (const joint of jointsOf(build))
    if (joint.pin) groups.join(placeOf(build, joint), `${joint.lead.id} ${joint.plug.id}.${joint.hole}`);
  return (place) => groups.rootOf(place);
}
