import { grouped } from '../base/grouped';
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
    const groupOf = holesJoined(lead);
    const groups = grouped(onePerHole(own), (joint) => groupOf.get(endOf(joint)));
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

/** For each hole with a wire to another one, a thing that all holes that hang together share. */
function holesJoined({ plugs, wires }: Lead): ReadonlyMap<string, object> {
  const own = new Set(plugs.map(({ id }) => id));
  const next = new Map<string, Set<string>>();
  for (const { from, to } of wires.filter((wire) => isBetween(own, wire))) {
    next.set(from, (next.get(from) ?? new Set()).add(to));
    next.set(to, (next.get(to) ?? new Set()).add(from));
  }
  const groupOf = new Map<string, object>();
  for (const start of next.keys()) {
    if (groupOf.has(start)) continue;
    const group = new Set([start]);
    // A set hands out what is added while it is gone through.
    for (const end of group) {
      groupOf.set(end, group);
      for (const far of next.get(end) ?? []) group.add(far);
    }
  }
  return groupOf;
}

function isBetween(plugs: ReadonlySet<string>, { from, to }: Wire): boolean {
  return plugs.has(splitEnd(from).owner) && plugs.has(splitEnd(to).owner);
}
