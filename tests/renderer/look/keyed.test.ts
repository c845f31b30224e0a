import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keyed } from '../../../renderer/look/keyed';

test('No two keys are the same, whatever people call their things', () => {
  const name = fc.constantFrom('Fan', 'Fan\n1', 'Fan\n2', 'Fan\n1\n1', '');
  fc.assert(
    fc.property(fc.array(name, { maxLength: 12 }), (names) => {
      const keys = keyed(names).map(([key]) => key);
      expect(new Set(keys).size).toBe(names.length);
    }),
    { seed: 100 },
  );
});

test('A key stays the same while others before it read otherwise', () => {
  const keyOf = (names: readonly string[]) => keyed(names).find(([, name]) => name === 'Hub')?.[0];
  expect(keyOf(['Fan', 'Hub'])).toBe(keyOf(['Hub']));
});
