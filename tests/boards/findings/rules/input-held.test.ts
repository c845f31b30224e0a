import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../../boards/findings/words';
import { bench } from '../harness';

describe('something of low resistance between an input and ground', () => {
  // ACPI 6.0, 4.8.2.2.1: power held for four seconds or more is an unconditional off.
  const board = bench().header('panel-2x5', 'panel').header('speaker-1x4', 'spk');

  test('a two-wide speaker on the power switch pins: on by itself, off after some seconds', () => {
    const build = board.lead('speaker-1x2', 'beeper').seat('beeper', 'panel', '6');
    expect(build.finding('input-held')).toMatchObject({
      severity: 'fault',
      leads: ['beeper'],
      data: { part: 'speaker', job: 'power-switch', certain: true },
    });
    expect(build.faults()).toEqual(['input-held']);
  });

  test('a cap on the reset pins: the machine stays in reset', () => {
    const build = board.lead('jumper-cap-1x2', 'cap').seat('cap', 'panel', '5');
    expect(build.finding('input-held').data.job).toBe('reset-switch');
  });

  test('8 Ω against a pull-up of 1 kΩ or more: far below the 0.8 V of a low', () => {
    // TTL low, ATX 3.0 design guide (336521), Table 4-11; the pull-up is from memory, so its whole range is asked.
    const { volts } = board
      .lead('speaker-1x2', 'beeper')
      .seat('beeper', 'panel', '6')
      .finding('input-held').data;
    expect(volts.high).toBeLessThan(0.8);
  });

  test('an LED there clamps the input at its own voltage: a low to some boards only', () => {
    const build = board.lead('drive-led-1x2', 'drive').seat('drive', 'panel', '6');
    expect(build.codes('drive')).toEqual(['wrong-function', 'input-held']);
    expect(build.finding('input-held')).toMatchObject({
      severity: 'doubt',
      data: { part: 'led', job: 'power-switch', certain: false },
    });
  });

  test('an LED there the wrong way round lets nothing through and holds nothing', () => {
    const build = board.lead('drive-led-1x2', 'drive').seat('drive', 'panel', '8', { turn: 180 });
    expect(build.codes('drive')).not.toContain('input-held');
  });

  // A lid that is off closes its switch for as long: common practice, no source.
  test('the switch of the lid on the power switch pins: on by itself while the lid is off', () => {
    const build = board.lead('case-open-1x2', 'lid').seat('lid', 'panel', '6');
    const finding = build.finding('input-held');
    expect(finding).toMatchObject({ severity: 'fault', data: { job: 'power-switch', certain: true } });
    expect(wordsOf(finding, build.build).title).toBe(
      'The machine would start by itself and go off again after some seconds while the case-open switch is closed.',
    );
    expect(build.faults()).toEqual(['input-held']);
  });

  test('on its own pins it reports what it is there for, and broken it holds nothing', () => {
    const own = bench().header('case-open-1x2', 'intruder').lead('case-open-1x2', 'lid');
    expect(own.seat('lid', 'intruder', '1').codes()).not.toContain('input-held');
    const parts = [{ id: 'switch', kind: 'case-open-switch', condition: 'broken' } as const];
    const broken = board.lead('case-open-1x2', 'lid', { parts }).seat('lid', 'panel', '6');
    expect(broken.codes()).not.toContain('input-held');
  });

  test('a switch there is open until it is pressed', () => {
    expect(board.lead('reset-switch-1x2', 'reset').seat('reset', 'panel', '5').faults()).toEqual([]);
  });

  test('a stuck switch on its own pins holds its input: take it off, no other place helps', () => {
    const parts = [{ id: 'switch', kind: 'power-switch', condition: 'stuck' }] as const;
    const build = board.lead('power-switch-1x2', 'power', { parts: [...parts] }).seat('power', 'panel', '6');
    expect(build.finding('input-held')).toMatchObject({
      severity: 'fault',
      data: { part: 'switch', job: 'power-switch', certain: true },
      remedies: [{ text: 'Take POWER off, and change or free the power switch.' }],
    });
    expect(build.faults()).toEqual(['input-held']);
  });

  test('a broken switch holds nothing', () => {
    const parts = [{ id: 'switch', kind: 'power-switch', condition: 'broken' }] as const;
    const build = board.lead('power-switch-1x2', 'power', { parts: [...parts] }).seat('power', 'panel', '6');
    expect(build.faults()).toEqual([]);
  });
});
