import { describe, expect, test } from 'vitest';
import { whyNoShim } from './shim/shim';
import { shimSweep } from './shim-sweep';

const why = whyNoShim();
if (why !== null) console.warn(`Faults under the real host: not run, ${why}.`);

describe.skipIf(why !== null)('The real host on a real disk that goes wrong', () => {
  test('leaves every file whole, and says what is so', async () => {
    const { tried, failures } = await shimSweep(11);
    expect(failures).toEqual([]);
    expect(tried).toBeGreaterThan(300);
  });
});
