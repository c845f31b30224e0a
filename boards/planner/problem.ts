import type { Build } from '../document/build';
import type { PlugRef } from '../document/lookup';
import { boxesCollide } from '../fit/geometry';
import { layDown } from '../fit/laid-plug';
import { nearIndex } from '../fit/near';
import { seatedPlug } from '../fit/seated-plug';
import { groupsOf } from './group';
import type { ChoiceAt, Instance } from './instance';
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
export function problemOf(build: Build, pinned: readonly PlugRef[]): Problem {
  const groups = groupsOf(build, pinned);
  const planned = new Set(groups.flatMap(({ lead, plugs }) => plugs.map((plug) => `${lead.id} ${plug.id}`)));
  const standing = build.seats
    .filter(({ lead, plug }) => !planned.has(`${lead} ${plug}`))
    .map((seat) => layDown(seatedPlug(build, seat)));
  return {
    build,
    groups: groups.map((group) => {
      const found = waysOf(build, group);
      const isFree = ({ laid }: Way) =>
        laid.every(
          ({ plug, body }) =>
            group.pinned.has(plug.id) || !standing.some((other) => boxesCollide(other.body, body)),
        );
      return { ...found, ways: found.ways.filter(isFree) };
    }),
  };
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
