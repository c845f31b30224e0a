import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import type { Lead } from '../../../boards/document/lead';
import { findingsOf } from '../../../boards/findings/findings';
import { compareCosts } from '../../../boards/planner/cost';
import { planFrom, solve } from '../../../boards/planner/plan';
import { problemOf } from '../../../boards/planner/problem';
import type { Progress } from '../../../boards/planner/progress';
import { unservedIn } from '../../../boards/planner/ways-out';
import { conflictWords, helplessWords, planWords } from '../../../boards/planner/words';
import { demo } from '../findings/demo';

const WIRED = demo('wired');
const LEADS = [...WIRED.case.leads, ...WIRED.extras];

/** Two hundred leads of the demo's kinds, and seven times its board: a place for about half of them. */
const MANY: Build = {
  ...WIRED,
  seats: [],
  extras: [],
  case: {
    ...WIRED.case,
    leads: Array.from({ length: 200 }, (_, at) => ({ ...lead(at), id: `lead-${at}` })),
  },
  board: {
    ...WIRED.board,
    connectors: Array.from({ length: 7 }, (_, copy) =>
      WIRED.board.connectors.map((connector) => ({
        ...connector,
        id: `${connector.id}-${copy}`,
        place: { ...connector.place, yMm: connector.place.yMm + 400 * copy },
      })),
    ).flat(),
  },
};

function lead(at: number): Lead {
  const found = LEADS[at % LEADS.length];
  if (found === undefined) throw new Error('The demo has no leads');
  return found;
}

describe('two hundred plugs, with few branches to look at', () => {
  const told: Progress[] = [];
  const limits = { steps: 2_000 };
  const solved = solve(
    problemOf(MANY, [], (each) => told.push(each)),
    limits,
    (each) => told.push(each),
  );
  const plan = planFrom(solved);

  it('have the best arrangement seen so far, and how far from the best it is at most, said as such', () => {
    expect(plan.seats.length).toBeGreaterThan(40);
    expect(plan.seats.length + plan.off.length).toBe(200);
    expect(plan.proved).toBe(false);
    expect(compareCosts(plan.bound, plan.cost)).toBeLessThanOrEqual(0);
    expect(planWords(plan, 10n)).toMatch(
      /^\d+ plugs cannot be served\. The search was stopped before it was done: (at most \d+ functions? more could be served|no arrangement serves more functions)\.$/,
    );
  });

  it('sit where they may: nothing dangerous, and no two on one pin', () => {
    expect(
      findingsOf({ ...MANY, seats: [...plan.seats] }).filter(({ severity }) => severity === 'danger'),
    ).toEqual([]);
  });

  it('are watched: every lead, then the branches', () => {
    expect(told.filter(({ stage }) => stage === 'places')).toHaveLength(200);
    expect(told.some(({ stage }) => stage === 'search')).toBe(true);
  });

  it('are told of one by one when they have no place, with what was not tried said', () => {
    const each = unservedIn(solved, { pinned: [], limits });
    const first = each.next().value;
    if (!first) throw new Error('Every plug has a place');
    expect(plan.off).toContainEqual(first.plug);
    expect(conflictWords(MANY, first)).toMatch(/no place|cannot all be served|No free place/);
    expect(first.waysOut.length > 0 || helplessWords(first) !== '').toBe(true);
  });
});
