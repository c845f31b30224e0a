import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { type Fault, fault, way } from '../../../boards/diagnosis/faults/fault';
import { type Evidence, suspicionOf } from '../../../boards/diagnosis/posterior';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import { demo } from '../findings/demo';

function trialNamed(id: string) {
  const found = trialsOf(demo('wired')).find((trial) => trial.id === id);
  if (!found) throw new Error(`No trial ${id}`);
  return found;
}

const BARE = trialNamed('bare-pins');
const BACK = trialNamed('back:power-switch');
const memory = fault('memory', 'memory', 1, 'Memory.', way(1, { memory: 'unusable' }));

describe('a lead that goes back where the manual says', () => {
  // Common practice, no source: wrong pins are cured in 8 of 10, a plug that was off in 19 of 20, and a switch never.
  const backOf = (trouble: Fault) => {
    const chances = dictionaryOf([trouble]).hypotheses[0]?.outcomes.map((outcome) =>
      BACK.chances([trouble], outcome),
    );
    return chances?.[0];
  };
  const of = (cause: Fault['cause'], lead = 'power-switch'): Fault => ({
    ...fault('any', cause, 1, 'Any.', way(1, { power: { rest: 'free', pressed: 'free' } })),
    lead,
  });

  it('is put right on the way where it was on wrong pins, or off', () => {
    expect(backOf(of('panel-lead-miswire'))?.back).toBeCloseTo(0.2, 9);
    expect(backOf(of('panel-lead-miswire'))?.['not-back']).toBeCloseTo(0.8, 9);
    expect(backOf(of('panel-lead-missing'))?.back).toBeCloseTo(0.05, 9);
  });

  it('brings back what sits in the lead itself, and nothing of another lead', () => {
    expect(backOf(of('switch-stuck'))?.back).toBe(1);
    expect(backOf(of('switch-stuck', 'reset-switch'))?.back).toBe(0);
  });

  it('does not acquit wrong pins when the trouble stays away', () => {
    const dictionary = dictionaryOf([of('panel-lead-miswire'), { ...memory, weight: 1 }]);
    const chanceAfter = (made: Evidence['tried']) =>
      suspicionOf(dictionary, { seen: [], notSeen: [], ...(made && { tried: made }) }).suspects.find(
        ({ cause }) => cause === 'panel-lead-miswire',
      )?.chance ?? 0;
    const bare = { trial: BARE, result: 'gone' } as const;
    const back = { trial: BACK, result: 'not-back' } as const;
    expect(chanceAfter([bare, back])).toBeGreaterThan(0.9 * chanceAfter([bare]));
  });
});
