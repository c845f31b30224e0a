import { readFileSync } from 'node:fs';

/**
 * How many checks held and how many did not.
 * @typedef {{ passed: number, failed: number, skipped: number }} Tally
 */

/**
 * What one run of the tests came to, by its own report. A run that left no report, or looked at nothing, has failed.
 * @param {string} path
 * @returns {Tally}
 */
export function tallyOf(path) {
  const report = readIfThere(path);
  if (report === null) return { passed: 0, failed: 1, skipped: 0 };
  const { numPassedTests: passed, numFailedTests, numPendingTests: skipped, success } = report;
  // A file that could not even be loaded counts no failed test, and is one.
  const failed = success && passed > 0 ? numFailedTests : Math.max(1, numFailedTests);
  return { passed, failed, skipped };
}

/**
 * @param {readonly Tally[]} tallies
 * @returns {Tally}
 */
export function sum(tallies) {
  /** @type {Tally} */
  const all = { passed: 0, failed: 0, skipped: 0 };
  for (const { passed, failed, skipped } of tallies) {
    all.passed += passed;
    all.failed += failed;
    all.skipped += skipped;
  }
  return all;
}

/** @param {string} path */
function readIfThere(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return null;
  }
}
