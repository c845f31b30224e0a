import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('leads and caps on the clear-settings jumper', () => {
  // Clear-settings jumper, cap on 1-2 to keep and on 2-3 to clear: common practice, no source.
  const board = bench().header('clear-settings-1x3', 'clear').header('panel-2x5', 'panel');

  test('a reset switch on the jumper clears the settings instead', () => {
    const build = board.lead('reset-switch-1x2', 'reset').seat('reset', 'clear', '2');
    expect(build.faults()).toEqual(['on-clear-settings']);
    expect(build.finding('on-clear-settings')).toMatchObject({
      severity: 'fault',
      leads: ['reset'],
      data: { part: 'switch' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'panel' } } }],
    });
  });

  test('the cap on the two pins that clear', () => {
    expect(board.lead('jumper-cap-1x2', 'cap').seat('cap', 'clear', '2').faults()).toEqual([
      'on-clear-settings',
    ]);
  });

  test('the cap on the two pins that keep is right', () => {
    expect(board.lead('jumper-cap-1x2', 'cap').seat('cap', 'clear', '1').faults()).toEqual([]);
  });
});
