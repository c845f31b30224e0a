import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { BOARD_FAULTS } from '../../../boards/diagnosis/faults/board-faults';
import { type Fault, fault, way } from '../../../boards/diagnosis/faults/fault';
import { FRONT_FAULTS } from '../../../boards/diagnosis/faults/front-faults';
import { SUPPLY_FAULTS } from '../../../boards/diagnosis/faults/supply-faults';
import { OBSERVATIONS, type ObservationId } from '../../../boards/diagnosis/observations/observations';
import { suspicionOf } from '../../../boards/diagnosis/posterior';
import { placeOf, predict } from '../../../boards/diagnosis/predict';

const FAULTS = [...FRONT_FAULTS, ...SUPPLY_FAULTS, ...BOARD_FAULTS];
const DICTIONARY = dictionaryOf(FAULTS);
const NOTHING = { seen: [], notSeen: [] };

const anyId = fc.constantFrom(...OBSERVATIONS.map(({ id }) => id));
const anyEvidence = fc.record({
  seen: fc.uniqueArray(anyId, { maxLength: 6 }),
  notSeen: fc.uniqueArray(anyId, { maxLength: 6 }),
});

/** Bayes' rule written out: every fault, every way, every observation; 5 in 100 misread, 3 in 100 none of these. */
function enumerated(
  faults: readonly Fault[],
  seen: readonly ObservationId[],
  notSeen: readonly ObservationId[],
) {
  const joint = faults.map((each) => {
    let sum = 0;
    for (const { chance, yes } of predict(each)) {
      let product = chance;
      for (const id of seen) product *= 0.95 * (yes[placeOf(id)] ?? 0) + 0.05 * 0.2;
      for (const id of notSeen) product *= 0.95 * (1 - (yes[placeOf(id)] ?? 0)) + 0.05 * 0.8;
      sum += product;
    }
    return each.weight * sum;
  });
  const weight = faults.reduce((sum, each) => sum + each.weight, 0);
  const none = ((weight * 0.03) / 0.97) * 0.1 ** seen.length * 0.9 ** notSeen.length;
  const all = joint.reduce((sum, each) => sum + each, none);
  return { faults: joint.map((each) => each / all), none: none / all };
}

describe('what is believed after what was noticed', () => {
  it('is what exact enumeration gives', () => {
    fc.assert(
      fc.property(anyEvidence, ({ seen, notSeen }) => {
        const { suspects, noneOfThese } = suspicionOf(DICTIONARY, { seen, notSeen });
        const exact = enumerated(FAULTS, seen, notSeen);
        expect(noneOfThese).toBeCloseTo(exact.none, 9);
        for (const { faults } of suspects)
          for (const { fault: one, chance } of faults)
            expect(chance).toBeCloseTo(exact.faults[FAULTS.indexOf(one)] ?? -1, 9);
      }),
      { numRuns: 50 },
    );
  });

  it('is shared out completely, the likeliest first', () => {
    fc.assert(
      fc.property(anyEvidence, (evidence) => {
        const { suspects, noneOfThese } = suspicionOf(DICTIONARY, evidence);
        expect(suspects.reduce((sum, { chance }) => sum + chance, noneOfThese)).toBeCloseTo(1, 9);
        const chances = suspects.map(({ chance }) => chance);
        expect(chances).toEqual([...chances].sort((a, b) => b - a));
      }),
      { numRuns: 50 },
    );
  });

  it('with nothing noticed is the weights, and three in a hundred for none of these', () => {
    const { suspects, noneOfThese } = suspicionOf(DICTIONARY, NOTHING);
    expect(noneOfThese).toBeCloseTo(0.03, 12);
    const weight = FAULTS.reduce((sum, each) => sum + each.weight, 0);
    const cell = suspects.find(({ cause }) => cause === 'coin-cell');
    expect(cell?.chance).toBeCloseTo((0.97 * 5) / weight, 9);
  });

  it('does not depend on the order, nor on saying a thing twice, five hundred times over', () => {
    const seen: ObservationId[] = ['no-picture', 'no-beep', 'kept-in-reset'];
    const once = suspicionOf(DICTIONARY, { seen, notSeen: [] });
    const many = Array.from({ length: 500 }, (_, at) => seen[2 - (at % 3)] ?? 'no-beep');
    const often = suspicionOf(DICTIONARY, { seen: many, notSeen: [] });
    expect(often.suspects.map(({ cause }) => cause)).toEqual(once.suspects.map(({ cause }) => cause));
    expect(often.noneOfThese).toBeCloseTo(once.noneOfThese, 12);
  });

  it('says what was said both ways, and stays finite', () => {
    const both = suspicionOf(DICTIONARY, { seen: ['smoke'], notSeen: ['smoke', 'smell'] });
    expect(both.contradicted).toEqual(['smoke']);
    for (const { chance } of both.suspects) expect(Number.isFinite(chance)).toBe(true);
  });

  it('comes to none of these when nothing known shows all that', () => {
    const seen: ObservationId[] = ['clock-wrong', 'front-audio-noise', 'breaker-trips', 'fan-speed-wrong'];
    expect(suspicionOf(DICTIONARY, { seen, notSeen: [] }).noneOfThese).toBeGreaterThan(0.5);
  });

  it('with no faults to choose from is none of these', () => {
    expect(suspicionOf(dictionaryOf([]), NOTHING)).toMatchObject({ suspects: [], noneOfThese: 1 });
  });

  it('takes what is noticed together from one way of a fault, not from two', () => {
    const either = fault(
      'either',
      'memory',
      1,
      'Either.',
      way(1, {}, { smoke: 0.9 }),
      way(1, {}, { rattle: 0.9 }),
    );
    const both = fault('both', 'cooling', 1, 'Both.', way(1, {}, { smoke: 0.45, rattle: 0.45 }));
    const { suspects } = suspicionOf(dictionaryOf([either, both]), {
      seen: ['smoke', 'rattle'],
      notSeen: [],
    });
    expect(suspects[0]?.cause).toBe('cooling');
  });
});
