import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a switch or a speaker between a supply and something else', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.1: +5 V at the panel header is not protected.
  // +5 V on pin 9: older board manuals (from memory).
  const board = bench().header('panel-2x5-supply', 'panel');

  test('a reset switch from +5 V on pin 9 to the reset input: a press would put +5 V on it', () => {
    const build = board.lead('reset-switch-1x2', 'reset').seat('reset', 'panel', '7');
    expect(build.finding('supply-joined')).toMatchObject({
      severity: 'danger',
      leads: ['reset'],
      pins: [
        { connector: 'panel', pin: '7' },
        { connector: 'panel', pin: '9' },
      ],
      data: { part: 'switch', volts: 5, other: 'reset-switch-input' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'panel', at: [1, 2] } } }],
    });
  });

  test('a speaker from +5 V to ground is a short', () => {
    const row = board.header('speaker-1x4', 'spk', { '4': { signal: 'ground' } });
    const build = row.lead('speaker-1x4', 'beeper').seat('beeper', 'spk', '1');
    expect(build.finding('supply-joined').data).toMatchObject({ volts: 5, other: 'ground' });
  });

  test('a switch between its input and ground, and a speaker on its own pins, are right', () => {
    const build = board
      .header('speaker-1x4', 'spk')
      .lead('reset-switch-1x2', 'reset')
      .seat('reset', 'panel', '5')
      .lead('speaker-1x4', 'beeper')
      .seat('beeper', 'spk', '1');
    expect(build.faults()).toEqual([]);
  });
});
