import { writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { expect, test } from 'vitest';
import { fingerprint } from '../../../electron/start/fingerprint.mjs';
import { inRoot } from '../../../electron/start/place.mjs';
import { sum, tallyOf } from '../../../electron/start/tally.mjs';
import { scratchFolder } from '../scratch';

test('A changed, added or renamed source is another fingerprint, and the same sources are the same', () => {
  const folder = scratchFolder();
  const of = () => fingerprint([relative(inRoot(), folder)]);
  writeFileSync(join(folder, 'a.ts'), 'one');
  const first = of();
  expect(of()).toBe(first);
  writeFileSync(join(folder, 'a.ts'), 'two');
  const second = of();
  expect(second).not.toBe(first);
  writeFileSync(join(folder, 'b.ts'), '');
  expect(of()).not.toBe(second);
});

test('A run of tests that left no report, looked at nothing or could not load a file has failed', () => {
  const path = join(scratchFolder(), 'report.json');
  const report = (value: object) => {
    writeFileSync(path, JSON.stringify(value));
    return tallyOf(path).failed;
  };
  expect(tallyOf(path).failed).toBe(1);
  expect(report({ numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, success: true })).toBe(1);
  expect(report({ numPassedTests: 9, numFailedTests: 0, numPendingTests: 0, success: false })).toBe(1);
  expect(report({ numPassedTests: 9, numFailedTests: 2, numPendingTests: 1, success: false })).toBe(2);
  expect(report({ numPassedTests: 9, numFailedTests: 0, numPendingTests: 0, success: true })).toBe(0);
});

test('All runs together are their sum', () => {
  const one = { passed: 2, failed: 1, skipped: 0 };
  expect(sum([one, { passed: 3, failed: 0, skipped: 4 }])).toEqual({ passed: 5, failed: 1, skipped: 4 });
});
