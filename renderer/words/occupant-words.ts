import { byIdentity } from '../../boards/base/by-identity';
import type { Build } from '../../boards/document/build';
import { type PinRef, type PlugRef, plugOf } from '../../boards/document/lookup';
import { type Joint, jointsOf } from '../../boards/fit/joints';
import { colourWords } from './plug-words';

/** The wires on each pin of a build, by "connector pin". */
const jointsByPin = byIdentity((build: Build): ReadonlyMap<string, readonly Joint[]> => {
  const found = new Map<string, Joint[]>();
  for (const joint of jointsOf(build)) {
    if (!joint.pin) continue;
    const key = pinKey({ connector: joint.connector.id, pin: joint.pin.pin });
    found.set(key, [...(found.get(key) ?? []), joint]);
  }
  return found;
});

export function pinKey({ connector, pin }: PinRef): string {
  return `${connector}/${pin}`;
}

/** The wires that touch a pin. */
function jointsAt(build: Build, pin: PinRef): readonly Joint[] {
  return jointsByPin(build).get(pinKey(pin)) ?? [];
}

/** "POWER SW, red wire": who is on a pin; empty when nobody is. */
export function occupantWords(build: Build, pin: PinRef): string {
  return jointsAt(build, pin)
    .map(({ lead, wire }) => `${lead.name}, ${colourWords(wire)} wire`)
    .join('; ');
}

/** The plugs on a connector, in the order of the seats. */
export function plugsOn(build: Build, connector: string): readonly PlugRef[] {
  return build.seats
    .filter((seat) => seat.connector === connector && plugOf(build, seat) !== undefined)
    .map(({ lead, plug }) => ({ lead, plug }));
}
