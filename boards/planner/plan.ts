import type { Build, Seat } from '../document/build';
import type { Lead, Plug } from '../document/lead';
import { leadsOf, type PlugRef, plugKey } from '../document/lookup';
import type { Finding } from '../findings/finding';
import { findingsOf } from '../findings/findings';
import { placesOf } from '../fit/places';
import type { Cost } from './cost';
import { instanceOf, type Problem, problemOf } from './problem';
import { TELL_NOBODY, type Tell } from './progress';
import { SEARCH_LIMITS, type Search, type SearchLimits, search } from './search';
import type { Way } from './ways';

/** Where every plug goes, and what was proved about it. */
export interface Plan {
  /** The seats of the whole build as planned, in the order of the leads. */
  readonly seats: readonly Seat[];
  /** Plugs that are better left off, for want of a place where they work. */
  readonly off: readonly PlugRef[];
  readonly cost: Cost;
  /** `true`: no arrangement is better. Otherwise `bound` is what none can beat. */
  readonly proved: boolean;
  readonly bound: Cost;
  readonly steps: number;
  /** What the checks still say about it. */
  readonly findings: readonly Finding[];
}

export interface PlanAsk {
  /** Plugs that keep the seat they have. */
  readonly pinned?: readonly PlugRef[];
  readonly limits?: SearchLimits;
  readonly tell?: Tell;
}

/** What the search found on a problem with its dangers told. */
export interface Solved {
  readonly problem: Problem;
  readonly answer: Exclude<Search, { kind: 'impossible' }> & {
    readonly choices: readonly number[];
    readonly cost: Cost;
  };
}

/**
 * The best seating of a build: every arrangement is better or worse by the levels of `Cost`, the gravest
 * first. The same build gives the same plan. Bodies and pins only: whether a cable is long enough is not
 * asked here.
 */
export function planOf(build: Build, { pinned = [], limits = SEARCH_LIMITS, tell }: PlanAsk = {}): Plan {
  return planFrom(solve(problemOf(build, pinned, tell), limits, tell));
}

/** What was found, as seats and what is known about them. */
export function planFrom({ problem, answer }: Solved): Plan {
  const ways = waysTaken(problem, answer.choices);
  const planned = seatsOf(problem, ways);
  return {
    seats: planned,
    off: problem.groups.flatMap(({ group }, at) =>
      group.plugs
        .filter((plug) => !ways[at]?.laid.some((laid) => laid.plug === plug))
        .map((plug) => ({ lead: group.lead.id, plug: plug.id })),
    ),
    cost: answer.cost,
    proved: answer.kind === 'best' && !problem.groups.some(({ narrowed }) => narrowed),
    bound: answer.kind === 'best' ? answer.cost : answer.bound,
    steps: answer.steps,
    findings: findingsOf({ ...problem.build, seats: [...planned] }),
  };
}

/**
 * Searches, asks the checks about what was found, and searches again with the dangers they name, until
 * they name no new one. Costs only grow, so the last answer is the optimum of the true costs.
 */
export function solve(start: Problem, limits: SearchLimits, tell: Tell = TELL_NOBODY): Solved {
  let problem = start;
  let before = 0;
  const asked = new Map<Way, number>();
  for (;;) {
    const sofar = before;
    tell({ stage: 'search', branches: sofar });
    const answer = search(instanceOf(problem), limits, (branches) =>
      tell({ stage: 'search', branches: sofar + branches }),
    );
    before += answer.steps;
    // Every slot has a way without a clash: to leave off what is not pinned.
    if (answer.kind === 'impossible') throw new Error('No arrangement, though everything may be left off');
    const { choices, cost } = answer;
    if (choices === undefined || cost === undefined)
      throw new Error('No arrangement seen, though everything may be left off');
    const news = waysTaken(problem, choices).filter((way) => way.laid.length > 0 && !asked.has(way));
    const dangers = new Map(news.map((way) => [way, dangersOf(problem.build, way)]));
    for (const [way, count] of dangers) asked.set(way, count);
    const grown = new Map([...dangers].filter(([, count]) => count > 0));
    if (grown.size === 0) return { problem, answer: { ...answer, choices, cost } };
    problem = {
      ...problem,
      groups: problem.groups.map((group) => ({ ...group, ways: group.ways.map(told) })),
    };
    function told(way: Way): Way {
      const danger = grown.get(way);
      if (danger === undefined) return way;
      const dearer = { ...way, cost: { ...way.cost, danger } };
      asked.set(dearer, danger);
      return dearer;
    }
  }
}

/** The dangers that the checks name with nothing but this seated. */
function dangersOf(build: Build, { laid }: Way): number {
  const alone = findingsOf({ ...build, seats: laid.map(({ seat }) => seat) });
  return alone.filter(({ severity }) => severity === 'danger').length;
}

export function waysTaken({ groups }: Problem, choices: readonly number[]): readonly Way[] {
  return groups.map(({ ways }, at) => {
    const way = ways[choices[at] ?? -1];
    if (way === undefined) throw new Error('A choice that is not among the ways');
    return way;
  });
}

/** What was planned and what was not touched, in the order of the leads and their plugs. */
function seatsOf({ build, groups }: Problem, ways: readonly Way[]): readonly Seat[] {
  const planned = new Set(
    groups.flatMap(({ group }) => group.plugs.map((plug) => plugKey({ lead: group.lead.id, plug: plug.id }))),
  );
  const all = [
    ...build.seats.filter((seat) => !planned.has(plugKey(seat))),
    ...ways.flatMap(({ laid }) => laid.map(({ seat }) => seat)),
  ];
  const order = new Map(
    leadsOf(build)
      .flatMap((lead) => lead.plugs.map((plug) => plugKey({ lead: lead.id, plug: plug.id })))
      .map((key, at) => [key, at]),
  );
  const placeOf = (seat: Seat) => order.get(plugKey(seat)) ?? 0;
  return all.sort((a, b) => placeOf(a) - placeOf(b));
}

/**
 * How many arrangements there are: every plug in each place where it fits with nothing else plugged in, or
 * left off. All but the planned one are ruled out when that is proved.
 */
export function arrangementsOf({ build, groups }: Problem): bigint {
  const bare: Build = { ...build, seats: [] };
  const counts = new Map<string, bigint>();
  const countOf = (lead: Lead, plug: Plug) => {
    const shape = JSON.stringify([plug, lead.wires]);
    const known = counts.get(shape);
    if (known !== undefined) return known;
    const count = BigInt(placesOf(bare, { lead: lead.id, plug: plug.id }).length + 1);
    counts.set(shape, count);
    return count;
  };
  return groups
    .flatMap(({ group }) =>
      group.plugs.filter(({ id }) => !group.pinned.has(id)).map((plug) => countOf(group.lead, plug)),
    )
    .reduce((product, count) => product * count, 1n);
}
