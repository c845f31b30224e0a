import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { BOARD_FAULTS } from '../../../boards/diagnosis/faults/board-faults';
import { FRONT_FAULTS } from '../../../boards/diagnosis/faults/front-faults';
import { SUPPLY_FAULTS } from '../../../boards/diagnosis/faults/supply-faults';
import { excludingIn } from '../../../boards/diagnosis/observations/exclusions';
import { OBSERVATIONS, type ObservationId } from '../../../boards/diagnosis/observations/observations';
import { suspicionOf } from '../../../boards/diagnosis/posterior';
import { placeOf } from '../../../boards/diagnosis/predict';
import { nextLooks } from '../../../boards/diagnosis/trials/next-trials';
import { contradictionWords } from '../../../boards/diagnosis/words';

const DICTIONARY = dictionaryOf([...FRONT_FAULTS, ...SUPPLY_FAULTS, ...BOARD_FAULTS]);
const ALL = excludingIn(new Set(OBSERVATIONS.map(({ id }) => id)));

// What a machine cannot show at once follows from what the questions ask; no source beside that.
describe('things that exclude each other', () => {
  it.each(ALL)('%s and %s are shown together by no fault as a rule', (one, other) => {
    for (const outcome of DICTIONARY.outcomes.flat())
      expect(Math.min(outcome.yes[placeOf(one)] ?? 1, outcome.yes[placeOf(other)] ?? 1)).toBeLessThan(0.5);
  });

  it.each(ALL)('%s and %s, both said to be so, are named as a contradiction', (one, other) => {
    const { excluding, contradicted } = suspicionOf(DICTIONARY, { seen: [other, one], notSeen: [] });
    expect([excluding, contradicted]).toEqual([[[one, other]], []]);
    expect(contradictionWords({ excluding, contradicted })).toHaveLength(1);
  });

  it('are no contradiction where one of them was looked for and is not there', () => {
    const evidence = { seen: ['standby-light'], notSeen: ['no-standby-light'] } as const;
    expect(suspicionOf(DICTIONARY, evidence).excluding).toEqual([]);
    expect(
      suspicionOf(DICTIONARY, { seen: [], notSeen: [...evidence.seen, ...evidence.notSeen] }).excluding,
    ).toEqual([]);
  });

  it('are not asked for once the other was seen', () => {
    const asked = (seen: readonly ObservationId[]) =>
      nextLooks(DICTIONARY, { seen: ['nothing-on-press', ...seen], notSeen: [] }, []).map(({ id }) => id);
    expect(asked([])).toContain('no-standby-light');
    expect(asked(['standby-light'])).not.toContain('no-standby-light');
  });
});
