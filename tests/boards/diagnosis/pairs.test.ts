import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finished } from '../../../boards/base/finished';
import { type Dictionary, dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { BOARD_FAULTS } from '../../../boards/diagnosis/faults/board-faults';
import { type Fault, fault, way } from '../../../boards/diagnosis/faults/fault';
import { FRONT_FAULTS } from '../../../boards/diagnosis/faults/front-faults';
import { SUPPLY_FAULTS } from '../../../boards/diagnosis/faults/supply-faults';
import { OBSERVATIONS, type ObservationId } from '../../../boards/diagnosis/observations/observations';
import { pairsInSteps, withPairs } from '../../../boards/diagnosis/pairs';
import { explainsBadly, isNoneLikeliest, suspicionOf } from '../../../boards/diagnosis/posterior';
import { placeOf, predictBoth } from '../../../boards/diagnosis/predict';
import { weighedTrials } from '../../../boards/diagnosis/trials/next-trials';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import { doubleWords } from '../../../boards/diagnosis/words';
import { demo } from '../findings/demo';

const leadOff = fault(
  'off',
  'panel-lead-missing',
  4,
  'Off.',
  way(1, { power: { rest: 'free', pressed: 'free' } }),
);
const memory = fault(
  'memory',
  'memory',
  6,
  'Memory.',
  way(2, { memory: 'unusable' }),
  way(1, {}, { freezes: 0.5 }),
);
const cell = fault('cell', 'coin-cell', 5, 'Cell.', way(1, {}, { 'clock-wrong': 0.95 }));
const noise = fault('noise', 'audio-shield', 2, 'Noise.', way(1, {}, { 'front-audio-noise': 0.95 }));
const rails = fault('short', 'short-metal', 3, 'Short.', way(1, { rails: 'shorted' }, { smell: 0.2 }));
const SMALL = [leadOff, memory, cell, noise, rails];

const chanceOf = (one: Fault, other: Fault, id: ObservationId) =>
  predictBoth(one, other).reduce((sum, { chance, yes }) => sum + chance * (yes[placeOf(id)] ?? 0), 0);

describe('two faults at once', () => {
  it('show what the earlier one in the start lets show: with the lead off nothing is seen of the memory', () => {
    expect(new Set(predictBoth(leadOff, memory).map(({ end }) => end))).toEqual(new Set(['not-asked']));
    expect(chanceOf(leadOff, memory, 'nothing-on-press')).toBeGreaterThan(0.9);
    expect(chanceOf(leadOff, memory, 'beep-code')).toBeLessThan(0.05);
    expect(chanceOf(leadOff, memory, 'freezes')).toBeLessThan(0.05);
  });

  it('both show where the start gets that far, whichever is named first', () => {
    for (const [one, other] of [
      [cell, noise],
      [noise, cell],
    ] as const) {
      expect(chanceOf(one, other, 'clock-wrong')).toBeGreaterThan(0.9);
      expect(chanceOf(one, other, 'front-audio-noise')).toBeGreaterThan(0.9);
    }
  });

  it('share themselves out completely, as one fault does', () => {
    const many = [...FRONT_FAULTS, ...SUPPLY_FAULTS, ...BOARD_FAULTS];
    fc.assert(
      fc.property(fc.constantFrom(...many), fc.constantFrom(...many), (one, other) => {
        const outcomes = predictBoth(one, other);
        expect(outcomes.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
        for (const { yes } of outcomes) {
          expect(Math.min(...yes)).toBeGreaterThan(0);
          expect(Math.max(...yes)).toBeLessThan(1);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('of which one is cured leave the other: taking the leads off makes another trouble of it', () => {
    const dictionary = onlyPair(withPairs(dictionaryOf([leadOff, memory])));
    const [bare] = weighedTrials(
      dictionary,
      { seen: [], notSeen: [] },
      trialsOf(demo('wired')).filter(({ id }) => id === 'bare-pins'),
    );
    const chance = (result: string) => bare?.results.find((each) => each.result === result)?.chance ?? 0;
    expect(chance('other')).toBeGreaterThan(0.85);
    expect(chance('gone')).toBeLessThan(0.05);
  });

  it('are named by both causes', () => {
    expect(doubleWords({ causes: ['memory', 'coin-cell'] })).toBe(
      'two things at once: the memory, and the coin cell',
    );
  });
});

function onlyPair(dictionary: Dictionary): Dictionary {
  return { ...dictionary, hypotheses: dictionary.hypotheses.filter(({ faults }) => faults.length === 2) };
}

describe('a dictionary with pairs', () => {
  const paired = withPairs(dictionaryOf(SMALL));

  it('gives what exact enumeration over singles, pairs and none of these gives', () => {
    const anyId = fc.constantFrom(...OBSERVATIONS.map(({ id }) => id));
    fc.assert(
      fc.property(fc.uniqueArray(anyId, { maxLength: 5 }), (seen) => {
        const weight = SMALL.reduce((sum, each) => sum + each.weight, 0);
        const given = (outcomes: ReturnType<typeof predictBoth>) =>
          outcomes.reduce(
            (sum, { chance, yes }) =>
              sum + seen.reduce((product, id) => product * (0.95 * (yes[placeOf(id)] ?? 0) + 0.01), chance),
            0,
          );
        const singles = SMALL.map((each) => each.weight * given(dictionaryOf([each]).outcomes[0] ?? []));
        const pairs = SMALL.flatMap((one, at) =>
          SMALL.slice(at + 1).map((other) => ({
            causes: [one.cause, other.cause].sort().join(),
            // Six in a hundred have a second fault, each as often as it is met by itself.
            joint: ((0.06 * one.weight * other.weight) / weight) * given(predictBoth(one, other)),
          })),
        );
        const second = SMALL.flatMap((one, at) =>
          SMALL.slice(at + 1).map((other) => (0.06 * one.weight * other.weight) / weight),
        );
        const before = weight + second.reduce((sum, each) => sum + each, 0);
        const none = ((before * 0.03) / 0.97) * 0.1 ** seen.length;
        const all = [...singles, ...pairs.map(({ joint }) => joint), none].reduce((a, b) => a + b, 0);

        const { suspects, doubles, noneOfThese } = suspicionOf(paired, { seen, notSeen: [] });
        expect(noneOfThese).toBeCloseTo(none / all, 9);
        for (const { cause, chance } of suspects)
          expect(chance).toBeCloseTo(
            (singles[SMALL.findIndex((each) => each.cause === cause)] ?? 0) / all,
            9,
          );
        for (const { causes, chance } of doubles)
          expect(chance).toBeCloseTo(
            (pairs.find((pair) => pair.causes === [...causes].sort().join())?.joint ?? 0) / all,
            9,
          );
      }),
      { numRuns: 60 },
    );
  });

  it('comes to two at once where each of two things is seen twice over, and one alone explains it badly', () => {
    const both = dictionaryOf([
      ...SMALL,
      fault('board', 'board-fault', 4, 'Board.', way(1, { processor: 'dead' })),
      fault('fan', 'fan-wiring', 3, 'Fan.', way(1, {}, { 'fan-speed-zero': 0.9, 'fan-full-speed': 0.8 })),
      fault('usb', 'usb-miswire', 3, 'USB.', way(1, {}, { 'usb-missing': 0.9, 'usb-unknown': 0.8 })),
    ]);
    const seen: ObservationId[] = ['fan-speed-zero', 'fan-full-speed', 'usb-missing', 'usb-unknown'];
    const alone = suspicionOf(both, { seen, notSeen: [] });
    expect(alone.doubles).toEqual([]);
    expect(explainsBadly(both, { seen, notSeen: [] })).toBe(true);
    const { doubles, suspects } = suspicionOf(withPairs(both), { seen, notSeen: [] });
    expect(doubles[0]?.causes).toEqual(['fan-wiring', 'usb-miswire']);
    expect(doubles[0]?.chance).toBeGreaterThan(suspects[0]?.chance ?? 1);
  });

  it('is not taken up where one fault explains everything', () => {
    const single = dictionaryOf(SMALL);
    expect(explainsBadly(single, { seen: ['clock-wrong'], notSeen: [] })).toBe(false);
    expect(explainsBadly(single, { seen: ['nothing-on-press'], notSeen: ['clock-wrong'] })).toBe(false);
    expect(explainsBadly(single, { seen: [], notSeen: [] })).toBe(false);
  });

  it('is taken up where what came of a trial is nothing that the likeliest fault would bring', () => {
    const [trial] = trialsOf(demo('wired')).filter(({ id }) => id === 'bare-pins');
    if (!trial) throw new Error('No trial');
    const given = (result: 'gone' | 'other') => ({
      seen: ['nothing-on-press'] as const,
      notSeen: [],
      tried: [{ trial, result }],
    });
    const single = dictionaryOf(SMALL);
    expect(explainsBadly(single, given('gone'))).toBe(false);
    expect(explainsBadly(single, given('other'))).toBe(true);
    const { doubles, suspects } = suspicionOf(withPairs(single), given('other'));
    expect(doubles[0]?.causes).toEqual(['memory', 'panel-lead-missing']);
    expect(doubles[0]?.chance).toBeGreaterThan(
      10 * (suspicionOf(withPairs(single), given('gone')).doubles[0]?.chance ?? 1),
    );
    expect(suspects.length).toBe(SMALL.length);
  });

  it('says aloud when none of these is the likeliest', () => {
    const nothingFits: ObservationId[] = ['breaker-trips', 'rear-port-blocked', 'tingle', 'fan-twitch'];
    expect(isNoneLikeliest(suspicionOf(paired, { seen: nothingFits, notSeen: [] }))).toBe(true);
    expect(isNoneLikeliest(suspicionOf(paired, { seen: ['clock-wrong'], notSeen: [] }))).toBe(false);
  });

  it('never pairs two faults of one lead or of one cause', () => {
    const one: Fault = { ...leadOff, id: 'one', lead: 'a', cause: 'panel-lead-miswire' };
    const other: Fault = { ...leadOff, id: 'other', lead: 'a' };
    const same: Fault = { ...memory, id: 'again' };
    const { hypotheses } = withPairs(dictionaryOf([one, other, memory, same]));
    const pairs = hypotheses.filter(({ faults }) => faults.length === 2);
    expect(pairs.map(({ faults }) => faults.map(({ id }) => id))).toEqual([
      ['memory', 'one'],
      ['memory', 'other'],
      ['again', 'one'],
      ['again', 'other'],
    ]);
  });
});

describe('work that is handed out in pieces', () => {
  it('can be left off at any piece, and is bounded in the number of pairs', () => {
    const dictionary = dictionaryOf([...FRONT_FAULTS, ...SUPPLY_FAULTS, ...BOARD_FAULTS]);
    const steps = pairsInSteps(dictionary);
    expect(steps.next()).toEqual({ done: false, value: 0 });
    const half = steps.next();
    expect(half.done).toBe(false);
    expect(half.value).toBeGreaterThan(0);
    const few = finished(pairsInSteps(dictionary, { singles: 10 }));
    expect(few.hypotheses.length - dictionary.hypotheses.length).toBeLessThanOrEqual(45);
  });
});
