import { expect, test } from 'vitest';
import { fullDisk, whyNoSmallDisk } from './full-disk';

const why = whyNoSmallDisk();
if (why !== null) console.warn(`A disk that is really full: not run, ${why}.`);

test.skipIf(why !== null)('On a real full disk the former file stays, and what is said is so', async () => {
  const { full, failures } = await fullDisk([0, 4_096, 8_192, 65_536, 131_072, 458_752]);
  expect(failures).toEqual([]);
  expect(full).toBe(5);
});
