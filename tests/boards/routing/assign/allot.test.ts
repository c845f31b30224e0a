import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type AllotItem, allot } from '../../../../boards/routing/assign/allot';
import { allotProgram } from '../../../reference/allot-program';
import { Dice } from '../../dice';

let reference: Awaited<ReturnType<typeof allotProgram>>;
beforeAll(async () => {
  reference = await allotProgram();
});

interface Question {
  readonly items: readonly AllotItem[];
  readonly places: readonly (readonly number[])[];
}

/** Up to nine drives or fans at up to five places, some of them equal, some without room for all. */
function anyQuestion(): fc.Arbitrary<Question> {
  return fc.nat().map((seed) => {
    const dice = new Dice(seed);
    const many = <T>(count: number, make: () => T) => Array.from({ length: count }, make);
    const places = many(1 + dice.below(5), () => [1 + dice.below(4), 2 + dice.below(20)]);
    const items = many(1 + dice.below(9), () => ({
      takes: [1, dice.below(9)],
      weight: dice.oneIn(4) ? 10 : 1,
      costs: places.map(() => (dice.oneIn(5) ? undefined : dice.below(7))),
    }));
    return { items, places };
  });
}

describe('an allotment beside an integer program', () => {
  it('leaves out as little and costs as little on 300 random questions, and takes no more than there is', () => {
    let leftOut = 0;
    let whole = 0;
    fc.assert(
      fc.property(anyQuestion(), ({ items, places }) => {
        const found = allot(items, places);
        expect({ leftOut: found.leftOut, cost: found.cost }).toEqual(reference(items, places));
        expect(found.proven).toBe(true);
        if (found.leftOut > 0) leftOut++;
        else whole++;
        places.forEach((room, place) => {
          room.forEach((most, of) => {
            const own = items.filter((_, at) => found.places[at] === place);
            expect(own.reduce((sum, { takes }) => sum + (takes[of] ?? 0), 0)).toBeLessThanOrEqual(most);
          });
        });
        const cost = items.reduce((sum, { costs }, at) => sum + (costs[found.places[at] ?? -1] ?? 0), 0);
        expect(cost).toBe(found.cost);
      }),
      { numRuns: 300, seed: 6 },
    );
    // Both kinds of question were asked.
    expect(Math.min(leftOut, whole)).toBeGreaterThan(20);
  }, 120_000);

  it('proves sixteen equal items at sixteen places of two kinds without trying every order', () => {
    const items = Array.from({ length: 16 }, () => ({
      takes: [1],
      weight: 1,
      costs: Array.from({ length: 16 }, (_, place) => place % 2),
    }));
    const places = items.map(() => [1]);
    expect(allot(items, places)).toMatchObject({ leftOut: 0, cost: 8, proven: true });
  });

  it('remembers little of a question with hundreds of places: it must not use up the memory of a window', () => {
    const dice = new Dice(11);
    const places = Array.from({ length: 200 }, () => [1, 1_000]);
    const items = Array.from({ length: 300 }, () => ({
      takes: [1, 500 + dice.below(300)],
      weight: 1,
      costs: places.map((_, place) => place % 3),
    }));
    const found = allot(items, places);
    expect(found).toMatchObject({ leftOut: 100, proven: false });
    expect(new Set(found.places).size).toBe(201);
  });

  it('says that it is not proved when the question is too large, and still takes no more than there is', () => {
    const dice = new Dice(7);
    const items = Array.from({ length: 40 }, () => ({
      takes: [50 + dice.below(400)],
      weight: 1,
      costs: Array.from({ length: 6 }, () => 1 + dice.below(50)),
    }));
    const places = Array.from({ length: 6 }, () => [1_200]);
    const found = allot(items, places);
    expect(found.proven).toBe(false);
    places.forEach(([most = 0], place) => {
      const own = items.filter((_, at) => found.places[at] === place);
      expect(own.reduce((sum, { takes }) => sum + (takes[0] ?? 0), 0)).toBeLessThanOrEqual(most);
    });
    expect(found.leftOut).toBe(found.places.filter((place) => place === undefined).length);
  });
});
