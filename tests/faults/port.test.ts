import { expect, test } from 'vitest';
import { portSweep } from './port-sweep';

test('A disk that goes wrong at any step, in this process, leaves every file whole and says what is so', async () => {
  const { tried, failures } = await portSweep(29);
  expect(failures).toEqual([]);
  expect(tried).toBeGreaterThan(150);
});
