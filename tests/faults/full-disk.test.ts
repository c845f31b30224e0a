import { expect, test } from 'vitest';
import { fullDisk, whyNoSmallDisk } from './full-disk';

const why = whyNoSmallDisk();
if (why !== null) console.warn(`A disk that is really full: not run, ${why}.`);

test.skipIf(why !== null)('On a real full disk the former file stays, and what is said is so', async () => {
  const { tried, failures } = await fullDisk([0, 4_096, 8_192, 12_288, 16_384, 65_536]);
  expect(failures).toEqual([]);
  expect(tried).toBe(6);
});
