import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { addCosts, COST_LEVELS, type Cost, compareCosts, NO_COST } from '../../../boards/planner/cost';
import type { ChoiceAt, Instance } from '../../../boards/planner/instance';
import { search } from '../../../boards/planner/search';
import { integerProgram } from '../../reference/integer-program';
import { anyInstance, likeSlots } from './any-instance';

let reference: (instance: Instance) => Cost | 'impossible';
beforeAll(async () => {
  reference = await integerProgram();
});

function cost(over: Partial<Cost>): Cost {
  return { ...NO_COST, ...over };
}

describe('the search against an integer program', () => {
  it('finds the optimum of HiGHS, or impossible as HiGHS does, on 500 random instances', () => {
    let impossible = 0;
    fc.assert(
      fc.property(anyInstance, (instance) => {
        const found = search(instance);
        const expected = reference(instance);
        if (expected === 'impossible') impossible += 1;
        if (found.kind === 'gave-up') throw new Error('gave up on a small instance');
        expect(found.kind === 'best' ? found.cost : found.kind).toEqual(expected);
        if (found.kind === 'best') expect(clashesIn(instance, found.choices)).toEqual([]);
      }),
      { numRuns: 500, seed: 20_261_126 },
    );
    // Both kinds of answer have to have been asked for.
    expect(impossible).toBeGreaterThan(10);
    expect(impossible).toBeLessThan(400);
  });

  it('finds the optimum where slots may change places, on 200 random instances', () => {
    fc.assert(
      fc.property(likeSlots, (instance) => {
        const found = search(instance);
        expect(found.kind === 'best' ? found.cost : found.kind).toEqual(reference(instance));
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});

describe('the search by itself', () => {
  it('gives the same answer to the same instance', () => {
    fc.assert(
      fc.property(anyInstance, (instance) => {
        expect(search(instance)).toEqual(search(structuredClone(instance)));
      }),
    );
  });

  it('never lets any number of lesser costs outweigh a graver one', () => {
    const instance: Instance = {
      slots: [{ choices: [{ cost: cost({ danger: 1 }) }, { cost: cost({ unserved: 900, moved: 900 }) }] }],
      clashes: [],
    };
    expect(search(instance)).toMatchObject({ kind: 'best', choices: [1] });
  });

  it('says how far it is from the optimum at most when its steps run out', () => {
    fc.assert(
      fc.property(anyInstance, fc.integer({ min: 1, max: 6 }), (instance, steps) => {
        const whole = search(instance);
        const cut = search(instance, { steps });
        if (cut.kind !== 'gave-up' || whole.kind !== 'best') return;
        expect(compareCosts(cut.bound, whole.cost)).toBeLessThanOrEqual(0);
        if (cut.cost) expect(compareCosts(whole.cost, cut.cost)).toBeLessThanOrEqual(0);
      }),
      { numRuns: 300 },
    );
  });

  it('adds levels up without one running into the next, with the greatest costs there are', () => {
    const most = Object.fromEntries(COST_LEVELS.map((level) => [level, 64_000])) as unknown as Cost;
    const slots = Array.from({ length: 200 }, () => ({ choices: [{ cost: most }] }));
    const found = search({ slots, clashes: [] });
    expect(found).toMatchObject({ kind: 'best', cost: addCosts(slots.map(() => most)) });
  });

  it('refuses costs that are not whole numbers from 0', () => {
    for (const danger of [-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => search({ slots: [{ choices: [{ cost: cost({ danger }) }] }], clashes: [] })).toThrow(
        RangeError,
      );
  });
});

function clashesIn({ clashes }: Instance, choices: readonly number[]) {
  const taken = ([slot, choice]: ChoiceAt) => choices[slot] === choice;
  return clashes.filter(([one, other]) => taken(one) && taken(other));
}
