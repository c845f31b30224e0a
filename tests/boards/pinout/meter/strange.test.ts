import { expect, it } from 'vitest';
import { pinRunOf, STRANGE } from './simulated-runs';

it('pins of headers that the library lacks are mostly right, and what is called certain is seldom wrong', () => {
  const small = STRANGE.filter(({ truth }) => truth.size <= 8);
  expect(small.length).toBeGreaterThan(10);
  const runs = small.flatMap((unknown) => [1, 2].map((at) => pinRunOf(unknown, 27_182_000 + at, 20)));
  const sum = (what: (run: (typeof runs)[number]) => number) => runs.reduce((all, run) => all + what(run), 0);
  expect(sum(({ right }) => right) / sum(({ pins }) => pins)).toBeGreaterThan(0.8);
  expect(sum(({ certain }) => certain) / sum(({ pins }) => pins)).toBeGreaterThan(0.5);
  expect(sum(({ certainAndWrong }) => certainAndWrong) / sum(({ certain }) => certain)).toBeLessThan(0.06);
});
