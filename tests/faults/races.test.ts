import { expect, test } from 'vitest';
import { race } from './races';

test('Whatever comes first, nothing is lost, nothing stale is written and no other file is written over', async () => {
  const { tried, failures } = await race(300, 20_261_126);
  expect(failures).toEqual([]);
  expect(tried).toBe(300);
});
