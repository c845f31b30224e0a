import fc from 'fast-check';
import { COST_LEVELS, type Cost, NO_COST } from '../../../boards/planner/cost';
import type { ChoiceAt, Instance } from '../../../boards/planner/instance';

const anyCost: fc.Arbitrary<Cost> = fc
  .dictionary(fc.constantFrom(...COST_LEVELS), fc.integer({ min: 0, max: 3 }), { maxKeys: 4 })
  .map((over) => ({ ...NO_COST, ...over }));

const anyChoices = fc.array(
  anyCost.map((cost) => ({ cost })),
  { minLength: 1, maxLength: 6 },
);

/** Few slots, many clashes: small enough for the reference, tight enough to be impossible now and then. */
export const anyInstance: fc.Arbitrary<Instance> = fc
  .array(anyChoices, { minLength: 1, maxLength: 8 })
  .chain((lists): fc.Arbitrary<Instance> => {
    const all = lists.flatMap((choices, slot) => choices.map((_, choice): ChoiceAt => [slot, choice]));
    const pairs = all.flatMap((one) =>
      all.filter((other) => other[0] > one[0]).map((other) => [one, other] as const),
    );
    const slots = lists.map((choices) => ({ choices }));
    if (pairs.length === 0) return fc.constant({ slots, clashes: [] });
    return fc
      .record({
        dense: fc.double({ min: 0, max: 0.7, noNaN: true }),
        seed: fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
      })
      .map(({ dense, seed }) => ({ slots, clashes: pairs.filter(() => seed.next().value < dense) }));
  });

/** Slots that want the same places, each of which holds one of them; the last choice is to be left off. */
export const likeSlots: fc.Arbitrary<Instance> = fc
  .record({
    places: fc.array(anyCost, { minLength: 1, maxLength: 5 }),
    count: fc.integer({ min: 2, max: 6 }),
    off: anyCost,
    other: anyChoices,
    blocks: fc.array(fc.tuple(fc.nat(5), fc.nat(5)), { maxLength: 6 }),
  })
  .map(({ places, count, off, other, blocks }) => {
    const choices = [...places, off].map((cost) => ({ cost }));
    const slots = [...Array.from({ length: count }, () => ({ choices, like: 'same' })), { choices: other }];
    const clashes: [ChoiceAt, ChoiceAt][] = [];
    for (let one = 0; one < count; one++) {
      for (let two = one + 1; two < count; two++)
        places.forEach((_, place) => {
          clashes.push([
            [one, place],
            [two, place],
          ]);
        });
      for (const [place, choice] of blocks)
        if (place < places.length && choice < other.length)
          clashes.push([
            [one, place],
            [count, choice],
          ]);
    }
    return { slots, clashes };
  });
