import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../boards/base/random';
import { normalBelow } from '../../../../boards/pinout/meter/bands';
import { askedBy, likelihoods } from '../../../../boards/pinout/meter/evidence';
import type { MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { PAIR_ANSWERS, PAIRS, pairAnswers } from '../../../../boards/pinout/meter/pair-answers';
import { kindIndex, pinKinds } from '../../../../boards/pinout/meter/pin-kinds';
import { plausibleRow } from '../../../../boards/pinout/meter/plausible';
import { SINGLES, singleAnswers } from '../../../../boards/pinout/meter/single-answers';
import { valueBelow } from '../../../../boards/pinout/meter/spread';
import { PARAMETER_IDS, parameterOf } from '../../../../boards/signals/parameters';
import { SIGNAL_IDS, type SignalId } from '../../../../boards/signals/signals';
import { simulatedMeter } from './simulated-meter';

const CLEAN = { noise: 0.01, wrong: 0 };
const questions: readonly MeterQuestion[] = [
  { kind: 'ohms', pin: '1' },
  { kind: 'volts', pin: '1', supply: 'standby' },
  { kind: 'volts', pin: '1', supply: 'running' },
];

describe('what a meter shows at a pin', () => {
  it('adds up to one for every kind of pin, in general, and between any two', () => {
    const sums = SINGLES.flatMap((single) => [
      ...singleAnswers(single).rows,
      singleAnswers(single).inGeneral,
    ]);
    const pairs = PAIRS.flatMap((pair) => [...pairAnswers(pair).rows, pairAnswers(pair).inGeneral]);
    for (const row of [...sums, ...pairs]) expect(row.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 6);
    for (const pair of PAIRS) expect(pairAnswers(pair).inGeneral).toHaveLength(PAIR_ANSWERS[pair].length);
  });

  // The circuit solver of boards/circuit measures made-up boards; the tables come from other algebra.
  it('is what the circuit solver shows, for every signal, on boards anywhere within the usual ranges', () => {
    const random = seededRandom(20_260_501);
    let looked = 0;
    for (const signal of SIGNAL_IDS)
      for (let board = 0; board < 6; board++) {
        const meter = simulatedMeter(new Map([['1', signal]]), random, CLEAN);
        for (const question of questions) {
          const reading = meter.answer(question);
          const asked = askedBy(question);
          if (!('single' in asked)) continue;
          const row = singleAnswers(asked.single).rows[kindIndex(signal)] ?? new Float64Array(1);
          expect(plausibleRow(reading, asked.single, row), `${signal}: ${JSON.stringify(reading)}`).toBe(
            true,
          );
          looked += 1;
        }
      }
    expect(looked).toBe(SIGNAL_IDS.length * 18);
  });

  // Common practice, no source: what anyone with a meter expects of these pins.
  it.each<[SignalId, MeterQuestion['kind'], number | 'open', SignalId]>([
    ['ground', 'ohms', 0.3, 'supply-5v'],
    ['power-switch-input', 'ohms', 10_000, 'drive-led-feed'],
    ['drive-led-feed', 'ohms', 380, 'power-switch-input'],
    ['no-connection', 'ohms', 'open', 'ground'],
    ['hd-presence', 'ohms', 10_100, 'hd-sense-send'],
    ['hd-sense1-return', 'ohms', 20_000, 'hd-sense2-return'],
  ])('%s at %s %s is far more probable than %s', (signal, _, ohms, other) => {
    const chances = likelihoods({ kind: 'ohms', pin: '1', ohms });
    expect(chances[kindIndex(signal)]).toBeGreaterThan(10 * (chances[kindIndex(other)] ?? 1));
  });

  it('counts a reading that may be wrong for less, and one with a wide tolerance for less than one without', () => {
    const ratio = (doubt: number | undefined, tolerance?: number) => {
      const chances = likelihoods({
        kind: 'volts',
        pin: '1',
        supply: 'running',
        volts: 5,
        ...(doubt !== undefined && { doubt }),
        ...(tolerance !== undefined && { tolerance }),
      });
      return (chances[kindIndex('supply-5v')] ?? 0) / (chances[kindIndex('hd-presence')] ?? 1);
    };
    expect(ratio(0.5)).toBeLessThan(ratio(undefined));
    expect(ratio(undefined, 0.5)).toBeLessThan(ratio(undefined));
    expect(ratio(1)).toBeCloseTo(1, 9);
  });
});

describe('kinds of pin', () => {
  it('hold every signal once; lines that no meter tells apart share one, power and reset do not', () => {
    const all = pinKinds().flatMap(({ signals }) => signals);
    expect([...all].sort()).toEqual([...SIGNAL_IDS].sort());
    expect(kindIndex('usb-d-plus')).toBe(kindIndex('usb-d-minus'));
    expect(kindIndex('drive-led-feed')).toBe(kindIndex('power-led-feed'));
    expect(kindIndex('power-switch-input')).not.toBe(kindIndex('reset-switch-input'));
    expect(kindIndex('drive-led-sink')).not.toBe(kindIndex('power-led-sink'));
  });
});

describe('the spread of a value', () => {
  it('runs from the low to the high end of its range, and rises', () => {
    for (const id of PARAMETER_IDS) {
      const { low, high } = parameterOf(id);
      const values = [0, 0.25, 0.5, 0.75, 1].map((share) => valueBelow(id, share));
      expect(values[0]).toBeCloseTo(low, 6);
      expect(values[4] ?? 0).toBeCloseTo(high, 3);
      expect(values.toSorted((a, b) => a - b)).toEqual(values);
    }
  });

  // Standard normal table, as in any textbook.
  it('uses the normal distribution of the tables', () => {
    expect(normalBelow(0)).toBeCloseTo(0.5, 6);
    expect(normalBelow(1)).toBeCloseTo(0.8413, 4);
    expect(normalBelow(-1.96)).toBeCloseTo(0.025, 4);
  });
});
