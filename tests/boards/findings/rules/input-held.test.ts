import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('something of low resistance between an input and ground', () => {
  // ACPI 6.0, 4.8.2.2.1: power held for four seconds or more is an unconditional off.
  const board = bench().header('panel-2x5', 'panel').header('speaker-1x4', 'spk');

  test('a two-wide speaker on the power switch pins: on by itself, off after some seconds', () => {
    const build = board.lead('speaker-1x2', 'beeper').seat('beeper', 'panel', '6');
    expect(build.finding('input-held')).toMatchObject({
      severity: 'fault',
      leads: ['beeper'],
      data: { part: 'speaker', job: 'power-switch' },
    });
    expect(build.faults()).toEqual(['input-held']);
  });

  test('a cap on the reset pins: the machine stays in reset', () => {
    const build = board.lead('jumper-cap-1x2', 'cap').seat('cap', 'panel', '5');
    expect(build.finding('input-held').data.job).toBe('reset-switch');
  });

  test('a switch there is open until it is pressed', () => {
    expect(board.lead('reset-switch-1x2', 'reset').seat('reset', 'panel', '5').faults()).toEqual([]);
  });
});
