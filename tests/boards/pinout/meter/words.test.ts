import { describe, expect, it } from 'vitest';
import { percent } from '../../../../boards/base/percent';
import type { PinReading } from '../../../../boards/document/pin-reading';
import type { MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { identifyPins } from '../../../../boards/pinout/meter/identify';
import {
  METER_CAUTIONS,
  originWords,
  problemWords,
  questionName,
  questionWords,
  riskWords,
  STATE_NAMES,
  STATE_WORDS,
  shownWords,
  signalWords,
  stateFor,
  verdictWords,
} from '../../../../boards/pinout/meter/words';
import { grid, posts } from '../../fixtures/bench';

const NBSP = '\u00a0';
const QUESTIONS: readonly MeterQuestion[] = [
  { kind: 'ohms', pin: '5' },
  { kind: 'volts', pin: '5', supply: 'running' },
  { kind: 'continuity', pins: ['5', '8'] },
  { kind: 'touch', pins: ['6', '8'], supply: 'standby' },
  { kind: 'touch', pins: ['6', '8'], supply: 'running' },
  { kind: 'lamp', plus: '1', minus: '3', supply: 'running' },
];

describe('words of a meter', () => {
  it('are sentences without shouting, and name the pins', () => {
    for (const question of QUESTIONS) {
      const words = [questionName(question), questionWords(question), STATE_WORDS[stateFor(question)]].join(
        ' ',
      );
      expect(words).not.toContain('!');
      expect(questionWords(question)).toMatch(/^[A-Z].*\.$/);
      const pins =
        'pin' in question
          ? [question.pin]
          : 'pins' in question
            ? question.pins
            : [question.plus, question.minus];
      for (const pin of pins) expect(questionName(question)).toContain(pin);
    }
    for (const caution of METER_CAUTIONS) expect(caution).toMatch(/^[A-Z].*\.$/);
    expect(Object.keys(STATE_NAMES)).toEqual(Object.keys(STATE_WORDS));
  });

  it('ask to unplug before resistance, and to save work before a touch that may stop the machine', () => {
    expect(STATE_WORDS[stateFor({ kind: 'ohms', pin: '1' })]).toMatch(/^Unplug the machine/);
    expect(questionWords({ kind: 'touch', pins: ['6', '8'], supply: 'running' })).toMatch(
      /^Save all work first/,
    );
  });

  it('tell what was noted as it stands on a meter', () => {
    const shown = (reading: PinReading) => shownWords(reading);
    expect(shown({ kind: 'ohms', pin: '1', ohms: 10_120 })).toBe(`10.1${NBSP}kΩ`);
    expect(shown({ kind: 'ohms', pin: '1', ohms: 'open' })).toBe('open');
    expect(shown({ kind: 'volts', pin: '1', supply: 'running', volts: -11.96 })).toBe(`−12${NBSP}V`);
    expect(shown({ kind: 'continuity', pins: ['1', '2'], joined: false })).toBe('not joined');
  });

  it('never call a thing wholly sure, and say why a reading is held back', () => {
    expect(percent(0.99999)).toBe(`over 99.9${NBSP}%`);
    expect(percent(0.9949)).toBe(`99${NBSP}%`);
    expect(percent(0.001)).toBe(`under 1${NBSP}%`);
    expect(riskWords({ code: 'may-be-supply', pin: '9', chance: 0.24 })).toBe(
      `Not touched: pin${NBSP}9 may be a supply (24${NBSP}%). Joined to anything, it could burn a trace.`,
    );
  });

  it('tell verdict, origin and signals that no reading tells apart', () => {
    const result = identifyPins(posts('panel', grid(2, 5)));
    if (!result.ok) throw new Error(result.problem.code);
    expect(verdictWords(result.value)).toBe('Nothing was measured yet.');
    expect(originWords({ kind: 'library', type: 'x', title: 'HD audio', turn: 180, mirrored: true })).toBe(
      'HD audio, half a turn round, mirrored',
    );
    expect(signalWords({ signal: 'usb-d-plus', chance: 1, alike: ['usb-d-minus'] })).toBe(
      'USB D+, or USB D−',
    );
  });

  it('refuse a connector without posts, and one with too many, with what to do', () => {
    const said = (connector: Parameters<typeof identifyPins>[0]) => {
      const result = identifyPins(connector);
      return result.ok ? '' : problemWords(result.problem);
    };
    expect(said(posts('none', grid(1, 2), { pins: [null, null] }))).toMatch(/^Every pin .* missing\. Mark/);
    expect(said(posts('many', grid(40, 3)))).toMatch(/^This connector has 120 pins; up to 80/);
    expect(said(posts('wide', grid(2, 40)))).toBe('');
  });
});
