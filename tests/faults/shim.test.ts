import { describe, expect, test } from 'vitest';
import { commandSweep } from './command-sweep';
import { killSweep } from './kill-sweep';
import { whyNoShim } from './shim/shim';
import { shimSweep } from './shim-sweep';

const why = whyNoShim();
if (why !== null) console.warn(`Faults under the real host: not run, ${why}.`);

describe.skipIf(why !== null)('The real host on a real disk that goes wrong', () => {
  test('leaves every file whole, and says what is so', async () => {
    const { tried, failures } = await shimSweep(31);
    expect(failures).toEqual([]);
    expect(tried).toBeGreaterThan(150);
  });

  test('that is killed at any step loses nothing', async () => {
    const { tried, failures } = await killSweep(61);
    expect(failures).toEqual([]);
    expect(tried).toBeGreaterThan(5);
  });

  test('under the command line, asked to end or killed in the middle, leaves the whole paper or none', async () => {
    const { tried, failures } = await commandSweep(19);
    expect(failures).toEqual([]);
    expect(tried).toBeGreaterThan(5);
  });
});
