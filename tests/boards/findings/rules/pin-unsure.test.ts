import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('pins that are not surely known', () => {
  // Common practice, no source: what a pin does is read in the manual or measured, not guessed.
  const guessed = { source: { kind: 'guessed' } } as const;

  function speakerOn(pins: Readonly<Record<string, object>>, lead = 'speaker-1x4') {
    const sure = { confidence: 0.9 };
    const base = { '1': { ...sure, ...pins['1'] }, '4': { ...sure, ...pins['4'] } };
    return bench().header('speaker-1x4', 'spk', base).lead(lead, 'beeper').seat('beeper', 'spk', '1');
  }

  test('a guessed pin under a contact', () => {
    expect(speakerOn({ '4': guessed }).finding('pin-unsure')).toMatchObject({
      severity: 'doubt',
      leads: ['beeper'],
      pins: [{ connector: 'spk', pin: '4' }],
      data: { connector: 'spk', unsure: [{ pin: '4', why: 'guessed' }] },
    });
  });

  test('an unknown pin, and one below seven parts in ten of confidence', () => {
    const build = speakerOn({ '1': { signal: 'unknown' }, '4': { confidence: 0.69 } });
    expect(build.finding('pin-unsure').data.unsure).toEqual([
      { pin: '1', why: 'unknown' },
      { pin: '4', why: 'low-confidence' },
    ]);
    expect(build.faults()).toEqual([]);
  });

  test('sources that name the speaker pins the other way round: nothing to a speaker, a doubt to a buzzer', () => {
    // Speaker header: most board manuals and an encyclopaedia list its order the other way round.
    expect(speakerOn({}).codes()).toEqual([]);
    expect(speakerOn({}, 'buzzer-1x4').finding('pin-unsure').data.unsure).toEqual([
      { pin: '1', why: 'sources-disagree' },
      { pin: '4', why: 'sources-disagree' },
    ]);
  });

  test('seven parts in ten are enough', () => {
    expect(speakerOn({ '4': { confidence: 0.7 } }).codes()).toEqual([]);
  });
});
