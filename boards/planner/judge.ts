import type { BoardSheet } from '../document/board-sheet';
import type { Part } from '../document/lead';
import { gridIndex } from '../document/numbering';
import { unsureBecause } from '../findings/unsure';
import { type Joint, jointsOfPlug } from '../fit/joints';
import { type LaidPlug, overhangOf } from '../fit/laid-plug';
import { matchOf, type PartMatch } from '../fit/match';
import { strangeness } from '../fit/proper-seats';
import { wireEndsAt } from '../fit/wire-ends';
import { partKindOf } from '../signals/part-kinds';
import type { Job } from '../signals/signal';
import type { Cost } from './cost';
import type { Group } from './group';
import { isMisnamed } from './place-names';
import { hemmedSides } from './reach';

/** Without these the machine does not start. Common practice, no source. */
const ESSENTIAL: ReadonlySet<Job> = new Set<Job>(['power-switch', 'main-power', 'cpu-power']);

/** What one way of seating a group does. */
export interface Judged {
  readonly cost: Cost;
  /** The parts that work so. */
  readonly served: readonly Part[];
}

/** The parts with wires in the plugs of a group, in the order of the lead. */
export function partsOfGroup({ lead, plugs }: Group): readonly Part[] {
  const ids = new Set(
    plugs.flatMap((plug) =>
      gridIndex(plug.grid).positions.flatMap(({ label }) =>
        wireEndsAt(lead, plug, label).flatMap(({ part }) => part?.id ?? []),
      ),
    ),
  );
  return lead.parts.filter(({ id }) => ids.has(id));
}

/**
 * What a way of seating a group costs by itself; those of its plugs that are not in `laid` are left off.
 * Danger is left at 0: the checks alone say what is dangerous, and they are asked only about what is
 * about to be chosen. So is what is moved: equal leads are judged once, wherever they sit now.
 */
export function judge(board: BoardSheet, group: Group, laid: readonly LaidPlug[]): Judged {
  const joints = laid.flatMap(jointsOfPlug);
  const matches = matchOf(joints);
  const parts = partsOfGroup(group);
  const served = matches.filter((match) => works(match) && isWhole(group, match, joints));
  const unserved = parts.filter((part) => !served.some((match) => match.part === part));
  const isEssential = ({ kind }: Part) => ESSENTIAL.has(partKindOf(kind).job);
  const sum = (of: (plug: LaidPlug) => number) => laid.reduce((all, plug) => all + of(plug), 0);
  return {
    served: served.map(({ part }) => part),
    cost: {
      danger: 0,
      essentialUnserved: unserved.filter(isEssential).length,
      unserved: unserved.filter((part) => !isEssential(part)).length,
      unsure: joints.filter((joint) => unsureBecause(joint) !== undefined).length,
      polarity: served.filter(({ verdict }) => verdict === 'reversed').length,
      overhang: sum((plug) => overhangOf(plug).length),
      misnamed: laid.filter((plug) => isMisnamed(group.lead, plug)).length,
      reach: sum((plug) => hemmedSides(board, plug)),
      strange: strangeness(matches),
      turned: sum(({ seat }) => Math.min(seat.turn, 360 - seat.turn) / 90),
      moved: 0,
    },
  };
}

/** Whether a part does its work as it lies: the right way round, or where that makes no harm, the other. */
function works({ kind, verdict }: PartMatch): boolean {
  switch (verdict) {
    case 'right':
    case 'unknown':
      return true;
    case 'reversed':
      return kind.reversed === 'nothing' || kind.reversed === 'other-colour';
    case 'ports-mixed':
    case 'wrong':
      return false;
  }
}

/** Whether every wire of the part that it cannot do without lies somewhere. */
function isWhole({ lead, plugs }: Group, { part }: PartMatch, joints: readonly Joint[]): boolean {
  return plugs.every((plug) =>
    gridIndex(plug.grid).positions.every(({ label }) =>
      wireEndsAt(lead, plug, label).every(
        (end) =>
          end.part !== part ||
          end.terminal?.spare === true ||
          joints.some((joint) => joint.plug === plug && joint.hole === label),
      ),
    ),
  );
}
