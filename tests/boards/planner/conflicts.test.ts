import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { conflictAbout } from '../../../boards/planner/conflict';
import type { Cost } from '../../../boards/planner/cost';
import type { Instance } from '../../../boards/planner/instance';
import { solve, waysTaken } from '../../../boards/planner/plan';
import { instanceOf, type Problem, problemOf } from '../../../boards/planner/problem';
import { SEARCH_LIMITS } from '../../../boards/planner/search';
import { integerProgram } from '../../reference/integer-program';
import { bench, grid, partLead, posts } from '../fixtures/bench';

let reference: (instance: Instance) => Cost | 'impossible';
beforeAll(async () => {
  reference = await integerProgram();
});

const SIGNALS = [
  'power-led-feed',
  'power-led-sink',
  'power-switch-input',
  'reset-switch-input',
  'ground',
  'drive-led-feed',
  'drive-led-sink',
] as const;

const KINDS = [
  ['power-led', { anode: '1', cathode: '2' }],
  ['drive-led', { anode: '1', cathode: '2' }],
  ['power-switch', { a: '1', b: '2' }],
  ['reset-switch', { a: '1', b: '2' }],
] as const;

/** A header with pins in any order, and more leads than it has room for. */
const crowded = fc
  .record({
    pins: fc.array(fc.constantFrom(...SIGNALS), { minLength: 4, maxLength: 10 }),
    kinds: fc.array(fc.constantFrom(...KINDS), { minLength: 2, maxLength: 5 }),
  })
  .map(({ pins, kinds }) =>
    bench(
      [posts('panel', grid(2, Math.ceil(pins.length / 2)), { pins })],
      kinds.map(([kind, wires], at) => partLead(`lead-${at}`, kind, grid(1, 2), wires)),
    ),
  );

/** The same with only those ways left in which everything of these slots works. */
function allServed(problem: Problem, slots: readonly number[]): Instance {
  return instanceOf({
    ...problem,
    groups: slots
      .flatMap((slot) => problem.groups[slot] ?? [])
      .map((group) => ({ ...group, ways: group.ways.filter(({ served }) => served.length === 1) })),
  });
}

describe('the plugs that cannot go together', () => {
  it('are impossible together, and possible without any one of them, by HiGHS, on 300 crowded headers', () => {
    let conflicts = 0;
    fc.assert(
      fc.property(crowded, (build) => {
        const { problem, answer } = solve(problemOf(build, []), SEARCH_LIMITS);
        const taken = waysTaken(problem, answer.choices);
        taken.forEach((way, slot) => {
          if (way.served.length > 0) return;
          conflicts += 1;
          const { plugs } = conflictAbout(problem, slot);
          const slots = plugs.map((ref) =>
            problem.groups.findIndex(({ group }) => group.lead.id === ref.lead),
          );
          expect(slots).toContain(slot);
          expect(reference(allServed(problem, slots))).toBe('impossible');
          for (const each of slots)
            expect(
              reference(
                allServed(
                  problem,
                  slots.filter((other) => other !== each),
                ),
              ),
            ).not.toBe('impossible');
        });
      }),
      { numRuns: 300, seed: 5 },
    );
    expect(conflicts).toBeGreaterThan(100);
  });
});
