import { describe, expect, test } from 'vitest';
import { applyCommand } from '../../../../boards/edit/apply';
import { Bench, bench } from '../harness';

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
    const build = board.lead('jumper-cap-1x2', 'cap').seat('cap', 'clear', '2');
    expect(build.faults()).toEqual(['on-clear-settings']);
    // Carried out, the remedy has to end it.
    const [remedy] = build.finding('on-clear-settings').remedies;
    const mended = remedy?.command && applyCommand(build.build, remedy.command);
    expect(mended?.ok && new Bench(mended.value).faults()).toEqual([]);
  });

  test('a loose cap is sent to the pins that keep, also where ground is pin 1; to none where there are two that clear', () => {
    const turned = bench()
      .header('clear-settings-1x3', 'clear', {
        '1': { signal: 'ground' },
        '3': { signal: 'no-connection', belongsTo: 'clear-settings' },
      })
      .lead('jumper-cap-1x2', 'cap');
    expect(turned.finding('lead-left-over').pins.map(({ pin }) => pin)).toEqual(['2', '3']);
    const two = bench()
      .header('clear-settings-1x3', 'clear', { '1': { missing: true } })
      .lead('jumper-cap-1x2', 'cap');
    expect(two.codes()).toEqual(['no-place']);
  });

  test('the cap on the two pins that keep is right', () => {
    expect(board.lead('jumper-cap-1x2', 'cap').seat('cap', 'clear', '1').faults()).toEqual([]);
  });
});
