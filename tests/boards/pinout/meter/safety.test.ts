import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../boards/base/random';
import type { PinReading } from '../../../../boards/document/pin-reading';
import { chancesIn, kindChances } from '../../../../boards/pinout/meter/held';
import type { MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { heldOf, identifyPins } from '../../../../boards/pinout/meter/identify';
import { kindIndex, pinKinds } from '../../../../boards/pinout/meter/pin-kinds';
import { riskOf, unfitChance } from '../../../../boards/pinout/meter/risks';
import { stateFor } from '../../../../boards/pinout/meter/words';
import { SIGNAL_IDS, type SignalId, signalOf } from '../../../../boards/signals/signals';
import { grid, posts } from '../../fixtures/bench';
import { simulatedMeter } from './simulated-meter';
import { KNOWN, STRANGE } from './simulated-runs';

/** Chances as if each post were surely one signal. */
function surely(...signals: readonly SignalId[]): Float64Array {
  const size = pinKinds().length;
  const kinds = new Float64Array(signals.length * size);
  signals.forEach((signal, post) => {
    kinds[post * size + kindIndex(signal)] = 1;
  });
  return kinds;
}

const POSTS = new Map([
  ['1', 0],
  ['2', 1],
]);
const touch: MeterQuestion = { kind: 'touch', pins: ['1', '2'], supply: 'standby' };
const lamp: MeterQuestion = { kind: 'lamp', plus: '1', minus: '2', supply: 'running' };

describe('a touch of two pins', () => {
  it('is only for grounds and the inputs that a switch of the case joins to ground', () => {
    const fit = SIGNAL_IDS.filter((signal) => riskOf(touch, surely(signal, 'ground'), POSTS) === undefined);
    expect(fit).toEqual(['ground', 'shield', 'power-switch-input', 'reset-switch-input', 'key-lock-input']);
  });

  it('is refused for every supply and every feed, whatever is at the other pin', () => {
    const live = SIGNAL_IDS.filter((signal) => ['supply', 'feed'].includes(signalOf(signal).nature));
    expect(live.length).toBeGreaterThan(15);
    for (const signal of live) {
      expect(riskOf(touch, surely(signal, 'ground'), POSTS)).toEqual({
        code: 'may-be-supply',
        pin: '1',
        chance: 1,
      });
      expect(riskOf(touch, surely('ground', signal), POSTS)).toEqual({
        code: 'may-be-supply',
        pin: '2',
        chance: 1,
      });
    }
  });

  it('is refused from a chance of more than 1 % on', () => {
    const kinds = surely('power-switch-input', 'ground');
    const size = pinKinds().length;
    kinds[size + kindIndex('ground')] = 0.991;
    kinds[size + kindIndex('supply-5v')] = 0.009;
    expect(riskOf(touch, kinds, POSTS)).toBeUndefined();
    kinds[size + kindIndex('ground')] = 0.989;
    kinds[size + kindIndex('supply-5v')] = 0.011;
    expect(riskOf(touch, kinds, POSTS)).toEqual({ code: 'may-be-supply', pin: '2', chance: 0.011 });
  });
});

describe('an LED tester', () => {
  it('stays away from more than 6 V', () => {
    const unfit = SIGNAL_IDS.filter((signal) => riskOf(lamp, surely(signal, 'ground'), POSTS) !== undefined);
    expect(unfit).toEqual([
      'supply-12v',
      'supply-minus-12v',
      'ieee1394-power',
      'serial-rts',
      'serial-txd',
      'serial-dtr',
      'fan-supply',
      'fan-tach',
    ]);
  });
});

describe('what is proposed next', () => {
  // Two pins: one is surely pulled up; the other may be its ground or a supply that happens to be loaded.
  it('is not the touch that would tell most, while the other pin may be a supply; and the reason is said', () => {
    const connector = {
      ...posts('pair', grid(1, 2)),
      readings: [
        { kind: 'volts', pin: '1', supply: 'standby', volts: 3.3 },
        { kind: 'ohms', pin: '1', ohms: 10_000 },
        { kind: 'ohms', pin: '2', ohms: 12, doubt: 0.5 },
      ] satisfies PinReading[],
    };
    const result = identifyPins(connector);
    if (!result.ok) throw new Error(result.problem.code);
    const { next, withheld } = result.value;
    const held = heldOf(connector, connector.readings);
    const supply = unfitChance(kindChances(held, chancesIn(held)), 1, 'supply');
    expect(supply).toBeGreaterThan(0.01);
    expect(withheld).toMatchObject({ question: { kind: 'touch' }, risk: { pin: '2' } });
    expect(next?.question.kind).not.toBe('touch');
    expect((withheld?.gainBits ?? 0) / (withheld?.effort ?? 1)).toBeGreaterThan(
      (next?.gainBits ?? 0) / (next?.effort ?? 1),
    );
    // With ground certain the same touch is what is proposed.
    const sure = identifyPins({
      ...connector,
      readings: [
        ...connector.readings.slice(0, 2),
        { kind: 'ohms', pin: '2', ohms: 0.2 },
        { kind: 'volts', pin: '2', supply: 'running', volts: 0 },
        { kind: 'volts', pin: '2', supply: 'standby', volts: 0 },
      ],
    });
    expect(sure.ok && sure.value.next?.question).toEqual({
      kind: 'touch',
      pins: ['1', '2'],
      supply: 'standby',
    });
  });

  it('never joins a supply to anything on any header, with no reading wrong, and is a touch often enough to tell', () => {
    let touches = 0;
    let withheldOnes = 0;
    for (const [at, { connector, truth }] of [...KNOWN, ...STRANGE]
      .filter(({ truth: { size } }) => size <= 10)
      .entries()) {
      const meter = simulatedMeter(truth, seededRandom(90_000 + at), { noise: 0.05, wrong: 0 });
      const readings: PinReading[] = [];
      while (readings.length < 14) {
        const result = identifyPins({ ...connector, readings: [...readings] });
        if (!result.ok) throw new Error(result.problem.code);
        const { next, withheld } = result.value;
        if (withheld) withheldOnes += 1;
        if (next === undefined) break;
        const { question } = next;
        if (question.kind === 'ohms' || question.kind === 'continuity')
          expect(stateFor(question)).toBe('unplugged');
        if (question.kind === 'touch') {
          touches += 1;
          for (const pin of question.pins) {
            const { nature } = signalOf(truth.get(pin) ?? 'unknown');
            expect(['ground', 'input'], `${question.pins} on ${connector.title} ${at}`).toContain(nature);
          }
        }
        readings.push(meter.answer(question));
      }
    }
    expect(touches).toBeGreaterThan(5);
    expect(withheldOnes).toBeGreaterThan(5);
  });
});
