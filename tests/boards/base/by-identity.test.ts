import { describe, expect, it } from 'vitest';
import { byIdentity } from '../../../boards/base/by-identity';

interface Sum {
  readonly first: readonly number[];
  readonly second: readonly number[];
  readonly label: string;
}

function counting() {
  let made = 0;
  const total = byIdentity(
    ({ first, second }: Sum) => {
      made++;
      return [...first, ...second].reduce((sum, each) => sum + each, 0);
    },
    ({ first, second }) => [first, second],
  );
  return { total, made: () => made };
}

describe('a value kept by the identity of what it depends on', () => {
  const first = [1, 2];
  const second = [3];

  it('is made once for the same parts, whatever else differs', () => {
    const { total, made } = counting();
    expect(total({ first, second, label: 'a' })).toBe(6);
    expect(total({ first, second, label: 'b' })).toBe(6);
    expect(made()).toBe(1);
  });

  it('is made anew for an equal part that is another object, and for parts in another order', () => {
    const { total, made } = counting();
    total({ first, second, label: '' });
    total({ first: [...first], second, label: '' });
    total({ first: second, second: first, label: '' });
    expect(made()).toBe(3);
  });

  it('keeps undefined as well as any other value', () => {
    let made = 0;
    const nothing = byIdentity((_: object) => {
      made++;
      return undefined;
    });
    const key = {};
    expect([nothing(key), nothing(key), made]).toEqual([undefined, undefined, 1]);
  });
});
