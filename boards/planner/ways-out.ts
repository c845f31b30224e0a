import { ok } from '../base/result';
import type { Build } from '../document/build';
import { holeState, leadOf, type PlugRef, plugOf, samePlug } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import { applyCommand } from '../edit/apply';
import type { Command } from '../edit/command';
import { type Conflict, conflictAbout } from './conflict';
import { type Cost, compareCosts } from './cost';
import { type Solved, solve, waysTaken } from './plan';
import { type Problem, problemOf } from './problem';
import { TELL_NOBODY, type Tell } from './progress';
import { SEARCH_LIMITS, type SearchLimits } from './search';

/** A part of a lead, by its ids. */
export interface PartRef {
  readonly lead: string;
  readonly part: string;
}

/** One remedy of the trade, tried out: what would work with it that does not now, and what would not any more. */
export interface WayOut {
  readonly kind: 'move-contact' | 'split-plug' | 'adapter' | 'leave-off' | 'let-go';
  /** What the program can do about it; an adapter has to be bought, and pinning is no part of a build. */
  readonly command: Command | undefined;
  /** Pinned plugs that may go elsewhere with it. */
  readonly letGo: readonly PlugRef[];
  readonly gains: readonly PartRef[];
  readonly loses: readonly PartRef[];
  /** Of the best plan with it. */
  readonly cost: Cost;
}

/** A plug that the best plan leaves off, why, and what would help. */
export interface Unserved {
  readonly plug: PlugRef;
  readonly conflict: Conflict;
  /** Those that help at all, the best first. */
  readonly waysOut: readonly WayOut[];
  /** Remedies that were not tried: with so many plugs, planning anew with each would last too long. */
  readonly untried: number;
}

/** Branches looked at with one remedy: what is found with fewer is true, if perhaps not the best. */
const REMEDY_STEPS = 20_000;

/** Leads planned anew for all remedies together: some 100 remedies on a usual build, 8 with 200 plugs. */
const LEADS_TRIED_LIMIT = 1_600;

interface RemedyAsk {
  readonly pinned: readonly PlugRef[];
  readonly limits?: SearchLimits;
  readonly tell?: Tell;
}

/**
 * Every plug that the best plan leaves off, with the fewest plugs and pins that cannot go together, and each
 * remedy of the trade with what it would make possible: worked out by planning anew with it. One after the
 * other, since each may take a while.
 */
export function* unservedIn(
  { problem, answer }: Solved,
  { pinned, limits = SEARCH_LIMITS, tell = TELL_NOBODY }: RemedyAsk,
): Generator<Unserved> {
  const { build } = problem;
  const taken = waysTaken(problem, answer.choices);
  const before = servedBy(problem, answer.choices);
  const left = problem.groups.flatMap(({ group }, slot) =>
    group.plugs
      .filter((plug) => !taken[slot]?.laid.some((laid) => laid.plug === plug))
      .map((plug) => ({ slot, ref: { lead: group.lead.id, plug: plug.id } })),
  );
  let mayTry = Math.floor(LEADS_TRIED_LIMIT / Math.max(1, problem.groups.length));
  for (const [done, { slot, ref }] of left.entries()) {
    tell({ stage: 'remedies', done, of: left.length });
    const conflict = conflictAbout(problem, slot);
    const remedies = remediesFor(build, ref, conflict);
    const tries = remedies.slice(0, mayTry);
    mayTry -= tries.length;
    const waysOut = tries
      .flatMap(({ kind, command, letGo = [] }) => {
        const tried = command ? applyCommand(build, command) : ok(build);
        if (!tried.ok) return [];
        const still = pinned.filter((each) => !letGo.some((plug) => samePlug(plug, each)));
        const then = solve(problemOf(tried.value, still), { steps: Math.min(limits.steps, REMEDY_STEPS) });
        const after = servedBy(then.problem, then.answer.choices);
        const gains = without(after, before);
        if (!gains.some(({ lead }) => lead === ref.lead)) return [];
        const loses = without(before, after);
        return [{ kind, command, letGo, gains, loses, cost: then.answer.cost }];
      })
      .sort((a, b) => a.loses.length - b.loses.length || compareCosts(a.cost, b.cost));
    yield { plug: ref, conflict, waysOut: withAdapter(waysOut), untried: remedies.length - tries.length };
  }
}

function servedBy(problem: Problem, choices: readonly number[]): readonly PartRef[] {
  return waysTaken(problem, choices).flatMap(({ served }, slot) => {
    const lead = problem.groups[slot]?.group.lead.id;
    return lead === undefined ? [] : served.map(({ id }) => ({ lead, part: id }));
  });
}

function without(some: readonly PartRef[], others: readonly PartRef[]): readonly PartRef[] {
  return some.filter(({ lead, part }) => !others.some((other) => other.lead === lead && other.part === part));
}

interface Remedy {
  readonly kind: WayOut['kind'];
  readonly command?: Command;
  readonly letGo?: readonly PlugRef[];
}

/** Move a contact to an empty hole, take the plug apart, leave off another lead of the conflict, let one go. */
function remediesFor(build: Build, ref: PlugRef, { plugs, kept }: Conflict): readonly Remedy[] {
  const lead = leadOf(build, ref.lead);
  const plug = plugOf(build, ref);
  if (!lead || !plug) return [];
  const holes = gridIndex(plug.grid).positions.map(({ label }) => label);
  const empty = holes.filter((hole) => holeState(lead, plug, hole) === 'empty');
  const moves = holes
    .filter((hole) => holeState(lead, plug, hole) === 'contact')
    .flatMap((from) =>
      empty.map(
        (to): Remedy => ({
          kind: 'move-contact',
          command: { name: 'move-contact', args: { ...ref, from, to } },
        }),
      ),
    );
  const rivals = [...new Set(plugs.map((other) => other.lead))].filter((id) => id !== ref.lead);
  return [
    ...kept.map((plug): Remedy => ({ kind: 'let-go', letGo: [plug] })),
    ...moves,
    { kind: 'split-plug', command: { name: 'split-plug', args: { lead: ref.lead, plug: ref.plug } } },
    ...rivals.map(
      (id): Remedy => ({
        kind: 'leave-off',
        command: { name: 'set-lead-aside', args: { lead: id, aside: true } },
      }),
    ),
  ];
}

/** An adapter lead does what taking the plug apart does, and leaves the plug whole. One of several moves is enough. */
function withAdapter(waysOut: readonly WayOut[]): readonly WayOut[] {
  const firstMove = waysOut.find(({ kind }) => kind === 'move-contact');
  const kept = waysOut.filter((way) => way.kind !== 'move-contact' || way === firstMove);
  return kept.flatMap((way): readonly WayOut[] =>
    way.kind === 'split-plug' ? [way, { ...way, kind: 'adapter', command: undefined }] : [way],
  );
}
