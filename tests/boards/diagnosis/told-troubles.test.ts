import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { CAUSES } from '../../../boards/diagnosis/faults/causes';
import { faultsOf } from '../../../boards/diagnosis/faults/faults';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import { type Ranked, ranksOf, shareWithin, type ToldTrouble } from '../../cases/ranks';
import { type Settled, settledOf, settledWithin } from '../../cases/settled';
import { demo } from '../findings/demo';

const file = new URL('../../cases/told-troubles.json', import.meta.url);
const troubles: readonly ToldTrouble[] = JSON.parse(readFileSync(file, 'utf8'));

// Troubles that people reported in public, restated in our own words. They were known when the weights were set.
describe('troubles that were told', () => {
  let ranks: readonly Ranked[] = [];
  let settled: readonly Settled[] = [];
  beforeAll(() => {
    const build = demo('wired');
    const dictionary = dictionaryOf(faultsOf(build));
    ranks = ranksOf(dictionary, troubles);
    settled = settledOf(dictionary, troubles, trialsOf(build));
  }, 120_000);

  it('are told in known words', () => {
    for (const { unknownCodes, cause } of ranks) {
      expect(unknownCodes).toEqual([]);
      expect(CAUSES).toHaveProperty(cause);
    }
  });

  it('have their true cause among the first five suspects in most cases, by what was noticed alone', () => {
    expect(ranks.filter(({ counts }) => counts)).toHaveLength(troubles.length);
    expect(shareWithin(ranks, 5)).toBeGreaterThanOrEqual(0.8);
    expect(shareWithin(ranks, 3)).toBeGreaterThanOrEqual(0.65);
  });

  it('put the jammed reset button first', () => {
    expect(ranks.find(({ id }) => id === 'jammed-reset')?.rank).toBe(1);
  });

  it('have what settled them, or a cheaper trial that separates as well, among the first three proposed in most cases', () => {
    const ids = trialsOf(demo('wired')).map(({ id }) => id);
    for (const { by } of settled) expect(ids).toEqual(expect.arrayContaining([...by]));
    expect(settled.length).toBeGreaterThan(15);
    expect(settledWithin(settled, 3)).toBeGreaterThanOrEqual(0.7);
  });
});
