import { byIdentity } from '../base/by-identity';
import { grouped } from '../base/grouped';
import { Groups } from '../circuit/islands';
import type { Lead, Wire } from '../document/lead';
import { splitEnd } from '../document/lead';
import type { Joint } from '../fit/joints';
import type { CheckContext } from './context';
import { type OnPin, onPin } from './seated-part';

/**
 * The pins that wires from plug to plug make one, two or more at a time: by a wire of their own, or by wires
 * that meet in a hole, of a plug that lies loose too. In the order in which the plugs sit.
 */
export function joinedByCables({ joints }: Pick<CheckContext, 'joints'>): readonly (readonly OnPin[])[] {
  const bare = joints.filter(({ part }) => part === undefined);
  return [...grouped(bare, ({ lead }) => lead)].flatMap(([lead, own]) => {
    const holes = holesJoined(lead);
    const groups = grouped(onePerHole(own), (joint) => holes.rootOf(endOf(joint)));
    return [...groups.values()]
      .map((group) => group.flatMap((joint) => (joint.pin ? [onPin(joint, joint.pin)] : [])))
      .filter(({ length }) => length > 1);
  });
}

/** Several wires may end in one hole; they lie on one pin. */
function onePerHole(joints: readonly Joint[]): readonly Joint[] {
  return [...new Map(joints.map((joint) => [endOf(joint), joint])).values()];
}

function endOf({ plug, hole }: Joint): string {
  return `${plug.id}.${hole}`;
}

/** The holes of a lead that its wires from plug to plug join. */
const holesJoined = byIdentity(({ plugs, wires }: Lead): Groups => {
  const own = new Set(plugs.map(({ id }) => id));
  const groups = new Groups();
  for (const wire of wires) if (isBetween(own, wire)) groups.join(wire.from, wire.to);
  return groups;
});

function isBetween(plugs: ReadonlySet<string>, { from, to }: Wire): boolean {
  return plugs.has(splitEnd(from).owner) && plugs.has(splitEnd(to).owner);
}
