import { byIdentity } from '../base/by-identity';
import type { PinRef, PlugRef } from '../document/lookup';
import type { LaidPlug } from '../fit/laid-plug';
import { meetsPin } from '../fit/landing';
import { NO_COST } from './cost';
import type { Group } from './group';
import type { Instance } from './instance';
import { partsOfGroup } from './judge';
import { instanceOf, type Problem } from './problem';
import { type SearchLimits, search } from './search';
import type { Way, Ways } from './ways';

/** Groups of plugs that cannot all be served, though all but any one of them could. */
export interface Conflict {
  readonly plugs: readonly PlugRef[];
  /** The pins they all want: every pin under a seat that would serve one of them fully. */
  readonly pins: readonly PinRef[];
  /** Those of the plugs that are pinned to where they sit. */
  readonly kept: readonly PlugRef[];
  /** Otherwise nothing is known but the plug itself: too many others have a part in it. */
  readonly proved: boolean;
}

/** Subsets looked at in search of a smallest conflict, before one that is only minimal is given. */
const SUBSETS_LIMIT = 1_000;

/** More plugs than this that hang together are not taken away one by one: it would last for minutes. */
const RELATIVES_LIMIT = 40;

/** Branches looked at to see whether some plugs go together. */
const TOGETHER_LIMITS: SearchLimits = { steps: 5_000 };

/**
 * Why a group is not served in the best plan: the fewest groups, itself among them, that cannot all be
 * served at once. One alone where the board has no place for it at all. No two of several conflicts of the
 * same size are told apart by anything but the order of the leads. Bounded: with very many plugs about it may
 * stay unproved.
 */
export function conflictAbout(problem: Problem, slot: number): Conflict {
  const whole = served(problem);
  const serving = whole.groups;
  const found = smallest(whole, slot) ?? minimal(whole, slot);
  const conflict = found ?? [slot];
  return {
    proved: found !== undefined,
    plugs: conflict.flatMap((at) => refsOf(serving[at]?.group)),
    pins: pinsUnder(conflict.flatMap((at) => serving[at]?.ways ?? [])),
    kept: conflict.flatMap((at) => pinnedOf(serving[at]?.group)),
  };
}

/** The problem with nothing but the ways that are wanted: one object for each, which is asked about every plug. */
const served = byIdentity(
  (problem: Problem): Problem => ({
    ...problem,
    groups: problem.groups.map((group) => ({ ...group, ways: waysWanted(group) })),
  }),
);

/** Those in which all is served. A pinned plug is where it is though it may serve nothing there. */
function waysWanted(group: Ways): readonly Way[] {
  const serving = group.ways.filter((way) => serves(group, way));
  return serving.length === 0 && group.group.pinned.size > 0 ? group.ways : serving;
}

function serves({ group }: Ways, { served }: Way): boolean {
  return served.length === partsOfGroup(group).length;
}

/** Whether the groups of these slots can all be served together; undefined where the search does not tell. */
export function goTogether(problem: Problem, slots: readonly number[]): boolean | undefined {
  const { whole, between } = taken(problem);
  const clashes = slots.flatMap((one, at) =>
    slots.flatMap((other, otherAt) =>
      (between.get(`${one} ${other}`) ?? []).map(
        ([[, choice], [, otherChoice]]): Clash => [
          [at, choice],
          [otherAt, otherChoice],
        ],
      ),
    ),
  );
  const found = search({ slots: slots.flatMap((slot) => whole.slots[slot] ?? []), clashes }, TOGETHER_LIMITS);
  if (found.kind === 'impossible') return false;
  return found.choices === undefined ? undefined : true;
}

type Clash = Instance['clashes'][number];

/** A problem without its costs, and its clashes by the slots they are between: asked about many subsets. */
const taken = byIdentity((problem: Problem) => {
  const { slots, clashes } = instanceOf(problem);
  const between = new Map<string, Clash[]>();
  for (const clash of clashes) {
    const key = `${clash[0][0]} ${clash[1][0]}`;
    const known = between.get(key);
    if (known) known.push(clash);
    else between.set(key, [clash]);
  }
  const free = slots.map(({ choices }) => ({ choices: choices.map(() => ({ cost: NO_COST })) }));
  return { whole: { slots: free, clashes }, between };
});

/** By size, then in the order of the leads; undefined where there are too many to try. */
function smallest(problem: Problem, slot: number): readonly number[] | undefined {
  const others = relatives(problem, slot);
  let tried = 0;
  for (let size = 0; size <= others.length; size++) {
    for (const subset of subsetsOf(others, size)) {
      tried += 1;
      if (tried > SUBSETS_LIMIT) return undefined;
      const slots = [slot, ...subset].sort((a, b) => a - b);
      if (goTogether(problem, slots) === false) return slots;
    }
  }
  return undefined;
}

/** Takes one after the other away as long as the rest cannot be served either. */
function minimal(problem: Problem, slot: number): readonly number[] | undefined {
  if (relatives(problem, slot).length > RELATIVES_LIMIT) return undefined;
  let slots = [slot, ...relatives(problem, slot)].sort((a, b) => a - b);
  if (goTogether(problem, slots) !== false) return undefined;
  for (const at of slots) {
    if (at === slot) continue;
    const without = slots.filter((each) => each !== at);
    if (goTogether(problem, without) === false) slots = without;
  }
  return slots;
}

/** The other slots that a chain of clashes ties to this one: no other can be to blame. */
function relatives(problem: Problem, slot: number): readonly number[] {
  const tied = new Set([slot]);
  const { clashes } = taken(problem).whole;
  for (let before = 0; before !== tied.size; ) {
    before = tied.size;
    for (const [[one], [other]] of clashes) {
      if (tied.has(one)) tied.add(other);
      if (tied.has(other)) tied.add(one);
    }
  }
  tied.delete(slot);
  return [...tied].sort((a, b) => a - b);
}

function* subsetsOf(items: readonly number[], size: number, from = 0): Generator<readonly number[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let at = from; at <= items.length - size; at++)
    for (const rest of subsetsOf(items, size - 1, at + 1)) yield [items[at] ?? 0, ...rest];
}

function refsOf(group: Group | undefined): readonly PlugRef[] {
  return group?.plugs.map((plug) => ({ lead: group.lead.id, plug: plug.id })) ?? [];
}

function pinnedOf(group: Group | undefined): readonly PlugRef[] {
  return refsOf(group).filter(({ plug }) => group?.pinned.has(plug));
}

function pinsUnder(ways: readonly Way[]): readonly PinRef[] {
  const pins = ways.flatMap(({ laid }) => laid.flatMap(pinsOf));
  return [...new Map(pins.map((ref) => [`${ref.connector} ${ref.pin}`, ref])).values()];
}

function pinsOf({ connector, landings }: LaidPlug): readonly PinRef[] {
  return landings
    .filter((landing) => landing.state === 'contact' && meetsPin(landing))
    .flatMap(({ pin }) => (pin ? [{ connector: connector.id, pin: pin.pin }] : []));
}
