import { describe, expect, it } from 'vitest';
import { chosen, fixedOrder, KNOWN, type Run, runOf } from './simulated-runs';

/** About 500 runs in all; `npm run bench` makes 500 for each layout, each way, with seeds of its own. */
const EACH = 12;
const SEED = 27_182_818;

describe('identification on simulated meters, 5 % noise and 5 % of readings wrong', () => {
  it('finds the true layout first in 95 % of the runs, with at most 60 % of the readings of a fixed order', () => {
    const seeds = Array.from({ length: EACH }, (_, at) => SEED + at);
    const ours = KNOWN.flatMap((unknown) => seeds.map((seed) => runOf(unknown, seed, chosen(unknown))));
    const fixed = KNOWN.flatMap((unknown) => seeds.map((seed) => runOf(unknown, seed, fixedOrder(unknown))));
    expect(ours.length + fixed.length).toBeGreaterThanOrEqual(500);
    const mean = (runs: readonly Run[], what: (run: Run) => number) =>
      runs.reduce((sum, run) => sum + what(run), 0) / runs.length;
    expect(mean(ours, ({ first }) => Number(first))).toBeGreaterThanOrEqual(0.95);
    expect(mean(ours, ({ readings }) => readings)).toBeLessThanOrEqual(
      0.6 * mean(fixed, ({ readings }) => readings),
    );
  });
});
