import { describe, expect, it } from 'vitest';
import type { PinSource } from '../../../../boards/document/connector';
import { singleRow } from '../../../../boards/library/grids';
import { choiceKey, pinsOf, withChoices } from '../../../../boards/pinout/pin-list/filling';
import { readPinList } from '../../../../boards/pinout/pin-list/pin-list';

// What becomes of a reading: common practice, no source.

const MANUAL: PinSource = { kind: 'manual', where: 'page 12' };

function read(text: string, positions: number) {
  const result = readPinList(text, { grid: singleRow(positions) });
  if (!result.ok) throw new Error(result.problem.code);
  return result.value.pins;
}

describe('pins filled from a list', () => {
  it('have the word as it stands for a name, and the source that the person named', () => {
    expect(pinsOf(read('1 hdd_led +\n2 no pin', 2), MANUAL)).toEqual([
      { pin: '1', signal: 'drive-led-feed', name: 'hdd_led +', source: MANUAL, confidence: 0.9 },
      { pin: '2', missing: true, name: 'no pin', source: MANUAL, confidence: 0.95 },
    ]);
  });

  it('are less sure where the word was guessed at, and never surer than their source', () => {
    const pins = read('1 PWR SW\n2 PWR SW', 2);
    expect(pinsOf(pins, MANUAL).map(({ confidence }) => confidence)).toEqual([0.95, 0.5]);
    expect(pinsOf(pins, { kind: 'guessed' }).map(({ confidence }) => confidence)).toEqual([0.4, 0.4]);
  });

  it('keep a word that was not understood, without a signal', () => {
    expect(pinsOf(read('1 FROB\n2 LAN LED+', 2), MANUAL)).toEqual([
      { pin: '1', name: 'FROB', source: MANUAL },
      { pin: '2', name: 'LAN LED+', source: MANUAL },
    ]);
  });

  it('keep what else the list says of them, from the same source', () => {
    const [pin] = pinsOf(read('1 GND\n1 +12V\n1 FROB', 1), MANUAL);
    expect(pin).toMatchObject({
      signal: 'ground',
      alternatives: [
        { signal: 'supply-12v', name: '+12V', source: MANUAL },
        { signal: 'unknown', name: 'FROB', source: MANUAL },
      ],
    });
  });

  it('have no signal where the list says two things in one place, until one is chosen; both are kept', () => {
    const pins = read('1 KEY 5VSB\n2 PLED+ HDLED+\n3 GND', 3);
    const standby = { signal: 'supply-5v-standby', source: MANUAL } as const;
    const none = { signal: 'no-connection', missing: true, source: MANUAL } as const;
    expect(pinsOf(pins, MANUAL).slice(0, 2)).toEqual([
      { pin: '1', name: 'KEY 5VSB', source: MANUAL, alternatives: [none, standby] },
      {
        pin: '2',
        name: 'PLED+ HDLED+',
        source: MANUAL,
        alternatives: [
          { signal: 'power-led-feed', source: MANUAL },
          { signal: 'drive-led-feed', source: MANUAL },
        ],
      },
    ]);
    const [twofold] = pins;
    if (!twofold) throw new Error('Three pins were given');
    const chosen = pinsOf(withChoices(pins, new Map([[choiceKey(twofold), 'supply-5v-standby']])), MANUAL);
    expect(chosen[0]).toMatchObject({ signal: 'supply-5v-standby', confidence: 1, alternatives: [none] });
  });

  it('keep that another line or column says that no pin stands there, or what would', () => {
    const says = (text: string) => read(text, 1).map(({ missing, signal, or }) => [missing ?? signal, or]);
    const none = { signal: 'no-connection', missing: true };
    expect(says('1 +5V\n1 KEY')).toEqual([['supply-5v', [{ ...none, name: 'KEY' }]]]);
    expect(says('1 KEY\n1 +5V')).toEqual([[true, [{ signal: 'supply-5v', name: '+5V' }]]]);
    expect(says('1\tKEY\t5VSB')).toEqual([[undefined, [none, { signal: 'supply-5v-standby' }]]]);
  });

  it('are what the person chose, for the word the choice was made of and no other', () => {
    const pins = read('1 FROB\n2 LED', 2);
    const [frob, led] = pins;
    if (!frob || !led) throw new Error('Two pins were given');
    const choices = new Map([
      [choiceKey(frob), 'reset-switch-input'],
      [choiceKey(led), 'no-pin'],
    ] as const);
    expect(pinsOf(withChoices(pins, choices), MANUAL)).toEqual([
      { pin: '1', signal: 'reset-switch-input', name: 'FROB', source: MANUAL, confidence: 1 },
      { pin: '2', missing: true, name: 'LED', source: MANUAL, confidence: 1 },
    ]);
    const [other] = withChoices(read('1 GND', 1), choices);
    expect(other?.signal).toBe('ground');
  });
});
