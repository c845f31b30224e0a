import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dictionaryOf } from '../../../boards/diagnosis/dictionary';
import { BOARD_FAULTS } from '../../../boards/diagnosis/faults/board-faults';
import { type Fault, fault, way } from '../../../boards/diagnosis/faults/fault';
import { FRONT_FAULTS } from '../../../boards/diagnosis/faults/front-faults';
import { SUPPLY_FAULTS } from '../../../boards/diagnosis/faults/supply-faults';
import { OBSERVATIONS } from '../../../boards/diagnosis/observations/observations';
import { type Evidence, suspicionOf } from '../../../boards/diagnosis/posterior';
import { trialCautions } from '../../../boards/diagnosis/trials/cautions';
import { stopsIn } from '../../../boards/diagnosis/trials/held-back';
import { nextLooks, nextTrials, weighedTrials } from '../../../boards/diagnosis/trials/next-trials';
import { trialsOf } from '../../../boards/diagnosis/trials/trials';
import { resultWords, stopWords, trialWords } from '../../../boards/diagnosis/trials/words';
import { demo } from '../findings/demo';

const TRIALS = trialsOf(demo('wired'));
const FAULTS = [...FRONT_FAULTS, ...SUPPLY_FAULTS, ...BOARD_FAULTS];
const DICTIONARY = dictionaryOf(FAULTS);
/** Those that have a meaning whatever was tried before. */
const ALWAYS = TRIALS.filter(({ after }) => after === undefined);
const STOPS = OBSERVATIONS.filter(({ stop }) => stop).map(({ id }) => id);
const NOTHING: Evidence = { seen: [], notSeen: [] };

function trialNamed(id: string) {
  const found = TRIALS.find((trial) => trial.id === id);
  if (!found) throw new Error(`No trial ${id}`);
  return found;
}

const stuckReset = fault(
  'stuck',
  'switch-stuck',
  1,
  'Reset stays pressed.',
  way(1, { reset: { rest: 'held', pressed: 'held' } }),
);
const memory = fault('memory', 'memory', 1, 'Memory.', way(1, { memory: 'unusable' }));

/** Entropy written out, in bits. */
function bits(chances: readonly number[]): number {
  return chances.reduce((sum, chance) => sum - (chance > 0 ? chance * Math.log2(chance) : 0), 0);
}

describe('what a trial is expected to tell', () => {
  it('is the figure worked by hand', () => {
    // Two faults of 0.485 each and none of these with 0.03; 4 trials in 100 done wrongly, any of three results alike.
    // So 0.97333, 0.01333 and 0.01333 for the one fault, turned round for the other; 0.7 same, 0.15 and 0.15 for none.
    // The results come with 0.48303, 0.01743 and 0.49953, which leaves them open by 1.10914 bits; with the fault known
    // by 0.97 x (0.97333 log2(1 / 0.97333) + 2 x 0.01333 log2 75) + 0.03 x 1.18129 = 0.23337 bits.
    const [weighed] = weighedTrials(dictionaryOf([stuckReset, memory]), NOTHING, [trialNamed('bare-pins')]);
    expect(weighed?.gainBits).toBeCloseTo(1.10914 - 0.23337, 4);
  });

  it('is what exact enumeration over faults and results gives', () => {
    const few = [...FRONT_FAULTS.slice(0, 6), ...SUPPLY_FAULTS.slice(0, 4), stuckReset, memory];
    const dictionary = dictionaryOf(few);
    const chancesAfter = (evidence: Evidence) => {
      const { suspects, noneOfThese } = suspicionOf(dictionary, evidence);
      return [...suspects.flatMap(({ faults }) => faults.map(({ chance }) => chance)), noneOfThese];
    };
    const anyEvidence = fc.record({
      seen: fc.uniqueArray(fc.constantFrom(...OBSERVATIONS.map(({ id }) => id)), { maxLength: 3 }),
      notSeen: fc.constant([]),
    });
    fc.assert(
      fc.property(anyEvidence, fc.constantFrom(...ALWAYS), (evidence, trial) => {
        const [weighed] = weighedTrials(dictionary, evidence, [trial]);
        const stays = (weighed?.results ?? []).reduce(
          (sum, { result, chance }) =>
            sum + chance * bits(chancesAfter({ ...evidence, tried: [{ trial, result }] })),
          0,
        );
        expect(weighed?.gainBits).toBeCloseTo(bits(chancesAfter(evidence)) - stays, 8);
        expect((weighed?.results ?? []).reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('puts the most for its effort first, then what would be if that told nothing, and what was made not again', () => {
    const seen: Evidence = { seen: ['no-picture', 'no-beep', 'kept-in-reset'], notSeen: [] };
    const best = (evidence: Evidence) =>
      weighedTrials(DICTIONARY, evidence, TRIALS)
        .filter(({ risk }) => risk === undefined)
        .reduce((a, b) => (b.gainBits / b.effort > a.gainBits / a.effort ? b : a)).trial;
    const order = nextTrials(DICTIONARY, seen, TRIALS);
    const [first, second] = order;
    if (!first || !second) throw new Error('Two trials at least');
    expect(first.trial).toBe(best(seen));
    const nothing = { trial: first.trial, result: first.trial.tellsNothing };
    expect(second.trial).toBe(best({ ...seen, tried: [nothing] }));
    expect(new Set(order.map(({ trial }) => trial.id)).size).toBe(order.length);
    const then = nextTrials(DICTIONARY, { ...seen, tried: [nothing] }, TRIALS);
    expect(then.map(({ trial }) => trial.id)).not.toContain(first.trial.id);
  });
});

describe('what to look for', () => {
  it('is worth what exact enumeration gives, and is not asked twice', () => {
    const small = dictionaryOf([stuckReset, memory]);
    const believed = (evidence: Evidence) => {
      const { suspects, noneOfThese } = suspicionOf(small, evidence);
      return [...suspects.map(({ chance }) => chance), noneOfThese];
    };
    const asked: Evidence = { seen: ['no-picture'], notSeen: [] };
    const looks = nextLooks(small, asked, TRIALS);
    const beep = looks.find(({ id }) => id === 'beep-code');
    const [stuck, bad, none] = [
      0.95 * 0.005 + 0.01,
      // Half of those whose memory is missing beep.
      0.95 * 0.5 + 0.01,
      0.1,
    ];
    const { suspects, noneOfThese } = suspicionOf(small, asked);
    const of = (cause: string) => suspects.find((each) => each.cause === cause)?.chance ?? 0;
    const yes = of('switch-stuck') * stuck + of('memory') * bad + noneOfThese * none;
    const stays =
      yes * bits(believed({ ...asked, seen: ['no-picture', 'beep-code'] })) +
      (1 - yes) * bits(believed({ ...asked, notSeen: ['beep-code'] }));
    expect(beep?.gainBits).toBeCloseTo(bits(believed(asked)) - stays, 9);
    expect(looks.map(({ id }) => id)).not.toContain('no-picture');
  });

  it('is nothing once it has to stop', () => {
    expect(nextLooks(DICTIONARY, { seen: ['no-picture'], notSeen: [] }, TRIALS).length).toBeGreaterThan(3);
    expect(nextLooks(DICTIONARY, { seen: ['no-picture', 'smell'], notSeen: [] }, TRIALS)).toEqual([]);
  });
});

describe('what a result does', () => {
  const chanceOfStuck = (faults: readonly Fault[], evidence: Evidence) =>
    suspicionOf(dictionaryOf(faults), evidence).suspects.find(({ cause }) => cause === 'switch-stuck')
      ?.chance ?? 0;

  it('finds the stuck reset button by its contact that is always closed', () => {
    const trial = trialNamed('measure-reset-button');
    const before = chanceOfStuck(FAULTS.concat(stuckReset), NOTHING);
    const tried = [{ trial, result: 'always-closed' }] as const;
    expect(chanceOfStuck(FAULTS.concat(stuckReset), { ...NOTHING, tried })).toBeGreaterThan(10 * before);
  });

  it('makes another trouble of a stuck reset button when its plug goes to the power pins', () => {
    const exchange = trialNamed('exchange-buttons');
    const [weighed] = weighedTrials(dictionaryOf([stuckReset]), NOTHING, [exchange]);
    const other = weighed?.results.find(({ result }) => result === 'other')?.chance ?? 0;
    expect(other).toBeGreaterThan(0.9);
  });

  it('puts leads back one at a time only after their going off had helped', () => {
    const backs = (evidence: Evidence) =>
      weighedTrials(DICTIONARY, evidence, TRIALS).filter(({ trial }) => trial.lead !== undefined).length;
    const trial = trialNamed('bare-pins');
    expect(backs(NOTHING)).toBe(0);
    expect(backs({ ...NOTHING, tried: [{ trial, result: 'same' }] })).toBe(0);
    expect(backs({ ...NOTHING, tried: [{ trial, result: 'gone' }] })).toBeGreaterThan(3);
  });
});

describe('after heat, smoke, sparks or a shock', () => {
  it.each(STOPS)(
    '%s: nothing is started, though it would tell something; only looks are left, mains pulled',
    (stop) => {
      const evidence: Evidence = { seen: ['no-picture', stop], notSeen: [] };
      const weighed = weighedTrials(DICTIONARY, evidence, TRIALS);
      expect(weighed.some(({ gainBits, trial }) => trial.powered && gainBits > 0.005)).toBe(true);
      const isPowered = (given: Evidence) =>
        nextTrials(DICTIONARY, given, TRIALS).some(({ trial }) => trial.powered);
      expect(isPowered(evidence)).toBe(false);
      expect(isPowered({ seen: ['no-picture'], notSeen: [stop] })).toBe(true);
      expect(stopsIn(evidence)).toEqual([stop]);
      expect(stopWords([stop]).filter((words) => words.startsWith('Do not plug in again: '))).toHaveLength(1);
    },
  );

  it('starts nothing while a fault that burns is likely, and still looks', () => {
    const turned = fault('turned', 'power-cable-reversed', 6, 'Turned.', way(1, { rails: 'shorted' }));
    const dictionary = dictionaryOf([turned, memory, stuckReset]);
    const order = nextTrials(dictionary, NOTHING, TRIALS);
    expect(order.length).toBeGreaterThan(0);
    expect(order.filter(({ trial }) => trial.powered)).toEqual([]);
    const sound = nextTrials(dictionaryOf([memory, stuckReset]), NOTHING, TRIALS);
    expect(sound.some(({ trial }) => trial.powered)).toBe(true);
  });
});

it('Every trial and every result has words, and each trial begins with mains off where leads are touched', () => {
  for (const trial of TRIALS) {
    const { title, steps } = trialWords(trial);
    expect(title).not.toBe('');
    if (!trial.powered && trial.id !== 'look-rear-switch') expect(steps[0]).toContain('pull the mains plug');
    for (const result of trial.results) expect(resultWords(result)).toMatch(/^[A-Z].*\.$/);
  }
});

it('Wherever pins or holes are joined while mains is on, whoever is not sure which leaves them alone', () => {
  const joins = TRIALS.filter((trial) =>
    trialWords(trial).steps.some((step) => /touch (only )?(these two|the two)|paper clip/.test(step)),
  );
  expect(joins.map(({ id }) => id).sort()).toEqual([
    'bare-pins',
    'fewest-parts',
    'out-of-case',
    'supply-alone',
  ]);
  for (const trial of joins)
    expect(trialCautions(trial).join(' '), trial.id).toContain('If you are not sure which two');
});

it('The rear switch is not switched off before it is looked at', () => {
  const cautions = trialCautions(trialNamed('look-rear-switch')).join(' ');
  expect(cautions).not.toContain('switch off');
  expect(cautions).toContain('nothing inside is touched');
  expect(trialCautions(trialNamed('look-caps')).join(' ')).toContain('supply switch off');
});
