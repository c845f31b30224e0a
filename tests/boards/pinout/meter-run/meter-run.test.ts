import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../../boards/document/connector';
import type { PinReading } from '../../../../boards/document/pin-reading';
import type { Identification, MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { identifyPins } from '../../../../boards/pinout/meter/identify';
import { measuredPins, shareAmongAlike } from '../../../../boards/pinout/meter-run/measured-pins';
import { nextBeside } from '../../../../boards/pinout/meter-run/next-beside';
import { sayingWords, shownWords, whyWords } from '../../../../boards/pinout/meter-run/outcome-words';
import { outcomesOf } from '../../../../boards/pinout/meter-run/outcomes';
import { ownRisk } from '../../../../boards/pinout/meter-run/own-risk';
import type { SignalId } from '../../../../boards/signals/signals';
import { grid, posts } from '../../fixtures/bench';

/** Front Panel I/O Connectivity Design Guide v1.3 (2005), Figure 10, as a person meets it: ten places, none at 10. */
const PANEL: Connector = {
  ...posts('panel', grid(2, 5, { numbering: { scheme: 'zig-zag', from: 'bottom-left' } })),
  pins: [{ pin: '10', missing: true }],
};
const ohms = (pin: string, shown: number | 'open'): PinReading => ({ kind: 'ohms', pin, ohms: shown });
const ENOUGH = [ohms('9', 'open'), ohms('7', 10_100), ohms('6', 10_100), ohms('8', 0.3), ohms('1', 400)];

function told(...readings: readonly PinReading[]): Identification {
  const result = identifyPins({ ...PANEL, readings: [...readings] });
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
}

const plain = (words: string) => words.replaceAll('\u00a0', ' ');

describe('what each outcome of a reading would say', () => {
  it('is told in ranges of the meter, the most probable first', () => {
    const outcomes = outcomesOf({ kind: 'ohms', pin: '5' }, told());
    const words = outcomes.map((outcome) => plain(`${shownWords(outcome.shown)}: ${sayingWords(outcome)}`));
    // A ground pin reads next to nothing, an unused one open (common practice, no source).
    expect(words.find((line) => line.startsWith('Under'))).toMatch(/^Under \d(\.\d+)? Ω: pin 5: ground/);
    expect(outcomes.map(({ chance }) => chance)).toEqual(
      outcomes.map(({ chance }) => chance).toSorted((a, b) => b - a),
    );
  });

  it('adds up to no more than one, whatever is asked of whatever was measured', () => {
    const pin = fc.constantFrom('1', '2', '3', '4', '5', '6', '7', '8', '9');
    const supply = fc.constantFrom('standby' as const, 'running' as const);
    const pair = fc
      .uniqueArray(pin, { minLength: 2, maxLength: 2 })
      .map(([a = '1', b = '2']) => [a, b] as const);
    const question: fc.Arbitrary<MeterQuestion> = fc.oneof(
      fc.record({ kind: fc.constant('ohms' as const), pin }),
      fc.record({ kind: fc.constant('volts' as const), pin, supply }),
      fc.record({
        kind: fc.constant('continuity' as const),
        pins: pair.map(([a, b]): [string, string] => [a, b]),
      }),
      fc.record({
        kind: fc.constant('touch' as const),
        pins: pair.map(([a, b]): [string, string] => [a, b]),
        supply,
      }),
      pair.chain(([plus, minus]) =>
        fc.record({
          kind: fc.constant('lamp' as const),
          plus: fc.constant(plus),
          minus: fc.constant(minus),
          supply,
        }),
      ),
    );
    fc.assert(
      fc.property(question, fc.integer({ min: 0, max: ENOUGH.length }), (asked, many) => {
        const outcomes = outcomesOf(asked, told(...ENOUGH.slice(0, many)));
        const sum = outcomes.reduce((all, { chance }) => all + chance, 0);
        expect(sum).toBeGreaterThan(0.7);
        expect(sum).toBeLessThan(1.0001);
        for (const { pins } of outcomes)
          for (const { signals } of pins) {
            const named = signals.reduce((all, { chance }) => all + chance, 0);
            expect(named).toBeLessThan(1.0001);
          }
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  it('of a touch names what the machine would do', () => {
    const words = outcomesOf({ kind: 'touch', pins: ['6', '8'], supply: 'standby' }, told(...ENOUGH)).map(
      (outcome) => plain(`${shownWords(outcome.shown)}: ${sayingWords(outcome)}`),
    );
    expect(words[0]).toMatch(/^It started: pin 6: power switch \(.*\); pin 8: ground/);
  });
});

describe('a reading that was skipped', () => {
  it('is not proposed, and another is', () => {
    const first = told().next?.question;
    if (first === undefined) throw new Error('Nothing is proposed');
    const second = nextBeside(PANEL, [first]);
    expect(second?.question).toBeDefined();
    expect(second?.question).not.toEqual(first);
    const third = second && nextBeside(PANEL, [first, second.question]);
    expect([first, second?.question]).not.toContainEqual(third?.question);
  });

  it('says nothing of the pins', () => {
    const { next } = told(...ENOUGH);
    const beside = nextBeside({ ...PANEL, readings: [...ENOUGH] }, []);
    expect(beside).toEqual(next);
  });
});

describe('a reading of one’s own choice', () => {
  it('is warned of while a pin may be a supply, and not once both are known for what a switch joins', () => {
    const touch: MeterQuestion = { kind: 'touch', pins: ['6', '8'], supply: 'standby' };
    expect(ownRisk(touch, told())).toMatchObject({ code: expect.stringMatching(/^may-/) });
    expect(ownRisk(touch, told(...ENOUGH))).toBeUndefined();
    expect(ownRisk({ kind: 'ohms', pin: '6' }, told())).toBeUndefined();
  });
});

describe('what is filled in', () => {
  it('is measured from the wanted chance on, with how many readings it rests on; the rest is guessed', () => {
    const { measured, guesses } = measuredPins(told(...ENOUGH), ENOUGH.length, 0.9);
    expect(measured.map(({ pin, signal }) => [pin, signal])).toEqual([
      ['1', 'drive-led-feed'],
      ['2', 'power-led-feed'],
      ['3', 'drive-led-sink'],
      ['4', 'power-led-sink'],
      ['5', 'ground'],
      ['6', 'power-switch-input'],
      ['7', 'reset-switch-input'],
      ['8', 'ground'],
      ['9', 'reserved'],
    ]);
    expect(guesses).toEqual([]);
    for (const { source, confidence } of measured) {
      expect(source).toEqual({ kind: 'measured', where: 'meter, 5\u00a0readings' });
      expect(confidence).toBeGreaterThanOrEqual(0.9);
      expect(confidence).toBeLessThanOrEqual(0.99);
    }
    const before = measuredPins(told(), 0, 0.9);
    expect(before.measured).toEqual([]);
    for (const { source, confidence } of before.guesses) {
      expect(source?.kind).toBe('guessed');
      expect(confidence).toBeLessThanOrEqual(0.5);
    }
  });
});

describe('a signal that no reading at its pin tells from another', () => {
  const first = { signal: 'power-led-feed', chance: 1, alike: ['drive-led-feed'] } as const;
  const layout = (signal: SignalId, chance: number) => ({
    chance,
    origin: { kind: 'panel' } as const,
    pins: [{ pin: '2', signal }],
  });

  it('has the share of the layouts it stands in', () => {
    const layouts = [layout('power-led-feed', 0.6), layout('drive-led-feed', 0.2), layout('ground', 0.2)];
    expect(shareAmongAlike('2', first, layouts)).toBeCloseTo(0.75, 12);
    expect(shareAmongAlike('2', first, [layout('ground', 1)])).toBe(0.5);
    expect(shareAmongAlike('2', { ...first, alike: [] }, layouts)).toBe(1);
  });

  it('is filled in no surer than that, with the other named beside it', () => {
    const pins = [{ pin: '2', chances: [first] }];
    const layouts = [layout('power-led-feed', 0.6), layout('drive-led-feed', 0.4)];
    const { measured, guesses } = measuredPins({ pins, layouts }, 3, 0.9);
    expect(measured).toEqual([]);
    expect(guesses).toMatchObject([{ signal: 'power-led-feed', confidence: 0.5 }]);
    expect(plain(guesses[0]?.source?.where ?? '')).toBe('meter, 3 readings; power LED +, or drive LED +');
  });
});

describe('why a reading is proposed', () => {
  it('is said without a unit of information theory', () => {
    const { next } = told();
    if (next === undefined) throw new Error('Nothing is proposed');
    expect(plain(whyWords(next))).toMatch(
      /^It is expected to tell as much as \d(\.\d)? yes-or-no answers, for one probe on an unplugged board\./,
    );
    expect(plain(whyWords({ ...next, gainBits: 0.2, effort: 1.8 }))).toMatch(
      /20 % of a yes-or-no answer, for 1\.8 times/,
    );
  });
});
