import type { Build } from '../document/build';
import { arrangementsOf, type Plan, type PlanAsk, planFrom, solve } from './plan';
import { problemOf } from './problem';
import { SEARCH_LIMITS } from './search';
import { type Unserved, unservedIn } from './ways-out';

/** What becomes known of the best seating: the plan first, then plug by plug why one has no place. */
export type SeatingNews =
  | { readonly kind: 'plan'; readonly plan: Plan; readonly arrangements: bigint }
  | { readonly kind: 'unserved'; readonly unserved: Unserved };

/** The best seating and everything about it, each part as soon as it is known. Plain data only. */
export function* bestSeating(
  build: Build,
  { pinned = [], limits = SEARCH_LIMITS, tell }: PlanAsk = {},
): Generator<SeatingNews> {
  const problem = problemOf(build, pinned, tell);
  const solved = solve(problem, limits, tell);
  yield { kind: 'plan', plan: planFrom(solved), arrangements: arrangementsOf(problem) };
  for (const unserved of unservedIn(solved, { pinned, limits, ...(tell && { tell }) }))
    yield { kind: 'unserved', unserved };
}
