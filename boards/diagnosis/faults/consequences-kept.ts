import { byIdentity } from '../../base/by-identity';
import type { Build, Seat } from '../../document/build';
import type { Connector, Pin } from '../../document/connector';
import type { Lead } from '../../document/lead';
import { type Joint, jointsOf } from '../../fit/joints';
import { alikeWays } from './alike-ways';
import { consequencesBeside } from './consequence';
import type { Way } from './fault';
import { isWatched, withOnly } from './showing';

/** What follows from leads of a build that sit or are otherwise than it says. */
export interface Consequences {
  /** @param seats in which those leads sit; seats of others are left as the build has them */
  readonly ofSeats: (leads: readonly string[], seats: readonly Seat[]) => readonly Way[];
  /** The lead where it sits, as it is given: with a stuck or a broken switch. */
  readonly ofLead: (lead: Lead) => readonly Way[];
}

/**
 * Consequences that are worked out once for all seats that bring the same wires to pins of the same meaning.
 * Those that come to the same are the same object, so that what is derived from them is found again.
 */
export function consequencesKept(build: Build): Consequences {
  const one = alikeWays();
  const groups = new Map<string, (seats: readonly Seat[]) => readonly Way[]>();
  return {
    ofSeats: (leads, seats) => {
      const key = leads.join(' ');
      const group = groups.get(key) ?? seatsOfLeads(build, leads, one);
      groups.set(key, group);
      return group(seats);
    },
    ofLead: (lead) => {
      const own = withOnly(build, [lead.id]);
      const changed = (each: Lead) => (each.id === lead.id ? lead : each);
      return one(
        consequencesBeside(build, [lead.id])({
          ...own,
          case: { ...own.case, leads: own.case.leads.map(changed) },
          extras: own.extras.map(changed),
        }),
      );
    },
  };
}

function seatsOfLeads(
  build: Build,
  leads: readonly string[],
  one: (ways: readonly Way[]) => readonly Way[],
): (seats: readonly Seat[]) => readonly Way[] {
  const known = new Map<string, readonly Way[]>();
  const own = withOnly(build, leads);
  let consequences: ((own: Build) => readonly Way[]) | undefined;
  return (seats) => {
    const wired: Build = { ...own, seats: seats.filter(({ lead }) => leads.includes(lead)) };
    const key = meaningOf(jointsOf(wired));
    const before = known.get(key);
    if (before) return before;
    consequences ??= consequencesBeside(build, leads);
    const ways = one(consequences(wired));
    known.set(key, ways);
    return ways;
  };
}

/** Which hole of which plug lies on a pin of which meaning: the same text for what must come to the same. */
function meaningOf(joints: readonly Joint[]): string {
  return joints
    .map(({ lead, plug, hole, connector, pin }) => {
      const pinMeaning = pin ? meaningsOn(connector).get(pin) : 'none';
      return `${lead.id} ${plug.id} ${hole} ${pinMeaning}`;
    })
    .join('\n');
}

/** All of a pin that circuit and rules look at. Its connector counts only where the board watches a fan's speed. */
const meaningsOn = byIdentity((connector: Connector): ReadonlyMap<Pin, string> => {
  const watched = isWatched(connector);
  return new Map(
    connector.pins.map((pin) => {
      const { signal, channel, belongsTo, values, wakeSupply, missing } = pin;
      return [pin, JSON.stringify([signal, channel, belongsTo, values, wakeSupply, missing, watched])];
    }),
  );
});
