import { byIdentity } from '../base/by-identity';
import type { Build } from '../document/build';
import type { Plug } from '../document/lead';
import { type PlugRef, plugKey, sameSeat, seatOf, unitWith } from '../document/lookup';
import { boxesCollide } from '../fit/geometry';
import { layDown } from '../fit/laid-plug';
import { nearIndex } from '../fit/near';
import { seatedPlug } from '../fit/seated-plug';
import { type Group, groupsOf } from './group';
import type { ChoiceAt, Instance } from './instance';
import { TELL_NOBODY, type Tell } from './progress';
import { type Way, type Ways, waysOf } from './ways';

/** A seating problem: the ways of every group, in the order of the leads. */
export interface Problem {
  readonly build: Build;
  readonly groups: readonly Ways[];
}

/**
 * The seating problem of a build: every plug that a part hangs on, and whose lead is not set aside. The
 * other seated plugs, cables and leads set aside, stay where they are and are in the way.
 */
export function problemOf(build: Build, pinned: readonly PlugRef[], tell: Tell = TELL_NOBODY): Problem {
  const groups = groupsOf(build, pinned);
  const planned = new Set(
    groups.flatMap(({ lead, plugs }) => plugs.map((plug) => plugKey({ lead: lead.id, plug: plug.id }))),
  );
  const known = new Map<string, Ways>();
  // What sits on a unit has millimetres of its own, and is in nobody's way on the board.
  const standing = build.seats
    .filter((seat) => !planned.has(plugKey(seat)) && !unitWith(build, seat.connector))
    .map((seat) => layDown(seatedPlug(build, seat)));
  return {
    build,
    groups: groups.map((group, done) => {
      tell({ stage: 'places', done, of: groups.length });
      const found = waysLike(build, group, known);
      const isFree = ({ laid }: Way) =>
        laid.every(
          ({ plug, body }) =>
            group.pinned.has(plug.id) || !standing.some((other) => boxesCollide(other.body, body)),
        );
      const ways = found.ways.filter(isFree).map((way) => withMoves(build, group, way));
      return { ...found, ways };
    }),
  };
}

/**
 * The ways of a group: as they were worked out before for the same lead on the same board, or taken over from
 * an equal lead, where there was one. Bodies and pins are the same.
 */
function waysLike(build: Build, group: Group, known: Map<string, Ways>): Ways {
  if (group.pinned.size > 0) return waysOf(build, group);
  const before = waysBefore({ board: build.board, lead: group.lead });
  const plugs = group.plugs.map(({ id }) => id).join(' ');
  const found = before.get(plugs) ?? waysOfShape(build, group, known);
  before.set(plugs, found);
  return { ...found, group };
}

const waysBefore = byIdentity(
  (_: Pick<Build, 'board'> & Pick<Group, 'lead'>) => new Map<string, Ways>(),
  ({ board, lead }) => [board, lead],
);

function waysOfShape(build: Build, group: Group, known: Map<string, Ways>): Ways {
  const { parts, wires } = group.lead;
  const shape = JSON.stringify([group.lead.name, group.plugs, parts, wires]);
  const like = known.get(shape);
  if (like === undefined) {
    const found = waysOf(build, group);
    known.set(shape, found);
    return found;
  }
  const ownPlug = (plug: Plug) => group.plugs.find(({ id }) => id === plug.id) ?? plug;
  return {
    ...like,
    group,
    ways: like.ways.map((way) => ({
      ...way,
      laid: way.laid.map((laid) => ({
        ...laid,
        lead: group.lead,
        plug: ownPlug(laid.plug),
        seat: { ...laid.seat, lead: group.lead.id },
      })),
    })),
  };
}

function withMoves(build: Build, { lead, plugs }: Group, way: Way): Way {
  const moved = plugs.filter((plug) => {
    const now = seatOf(build, { lead: lead.id, plug: plug.id });
    const then = way.laid.find((laid) => laid.plug === plug)?.seat;
    return now !== undefined && (then === undefined || !sameSeat(now, then));
  }).length;
  return { ...way, cost: { ...way.cost, moved } };
}

/** The problem without its geometry. Pinned plugs never clash with each other: the person put them there. */
export function instanceOf({ groups }: Problem): Instance {
  const bodies = groups.flatMap(({ group, ways }, slot) =>
    ways.flatMap(({ laid }, choice) =>
      laid.map(({ plug, body }) => ({
        at: [slot, choice] as ChoiceAt,
        body,
        pinned: group.pinned.has(plug.id),
      })),
    ),
  );
  const near = nearIndex(bodies, ({ body }) => body);
  const clashes = new Map<string, readonly [ChoiceAt, ChoiceAt]>();
  for (const { at, body, pinned } of bodies) {
    for (const other of near(body)) {
      if (other.at[0] <= at[0] || (pinned && other.pinned) || !boxesCollide(body, other.body)) continue;
      clashes.set(`${at.join()} ${other.at.join()}`, [at, other.at]);
    }
  }
  return { slots: groups.map(slotOf), clashes: [...clashes.values()] };
}

function slotOf({ ways }: Ways) {
  const like = JSON.stringify(
    ways.map(({ cost, laid }) => [
      Object.values(cost),
      laid.map(({ body }) => [body.leftMm, body.topMm, body.rightMm, body.bottomMm]),
    ]),
  );
  return { choices: ways.map(({ cost }) => ({ cost })), like };
}
