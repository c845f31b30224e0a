import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { faultsOf } from '../../../boards/diagnosis/faults/faults';
import { observationNamed } from '../../../boards/diagnosis/observations/observations';
import { suspicionOf } from '../../../boards/diagnosis/posterior';
import { nextLooks, nextTrials } from '../../../boards/diagnosis/trials/next-trials';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import type { Build } from '../../../boards/document/build';
import { demo } from '../findings/demo';
import { bench, grid, posts } from '../fixtures/bench';

const wired = demo('wired');
const MACHINES: Readonly<Record<string, Build>> = {
  'with nothing plugged in': { ...wired, seats: [] },
  'without leads': { ...wired, seats: [], extras: [], case: { ...wired.case, leads: [] } },
  'without a supply, nor a header for one': bench([posts('panel', grid(2, 5))], []),
};

describe('a machine of which little is written down', () => {
  it.each(Object.keys(MACHINES))('%s is diagnosed by what any machine may have', (name) => {
    const build = MACHINES[name];
    if (!build) throw new Error(name);
    const dictionary = dictionaryOf(faultsOf(build));
    expect(dictionary.faults.length).toBeGreaterThan(60);
    const evidence = { seen: ['nothing-on-press'] as const, notSeen: [] };
    const { suspects, noneOfThese } = suspicionOf(dictionary, evidence);
    expect(suspects.reduce((sum, { chance }) => sum + chance, noneOfThese)).toBeCloseTo(1, 9);
    expect(suspects.map(({ cause }) => cause)).toContain('psu-fault');
    expect(nextLooks(dictionary, evidence, trialsOf(build)).length).toBeGreaterThan(3);
    expect(nextTrials(dictionary, evidence, trialsOf(build)).length).toBeGreaterThan(3);
    expect(trialsOf(build).filter(({ lead }) => lead !== undefined)).toEqual([]);
  });

  it('has no question by a name that nobody knows', () => {
    for (const name of ['', 'nothing on press', 'NOTHING-ON-PRESS', '__proto__', 'constructor'])
      expect(observationNamed(name)).toBeUndefined();
  });
});
