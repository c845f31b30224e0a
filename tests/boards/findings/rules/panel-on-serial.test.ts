import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('panel leads on a serial header', () => {
  // TIA-232 2x5 header with the key on pin 10, as on the panel: a single-board manual.
  const board = bench().header('panel-2x5', 'panel').header('serial-2x5-ribbon', 'com');

  test('the panel block fits by its key; its LEDs would take the swings: a danger, told once', () => {
    const build = board.lead('panel-block-2x5', 'block').seat('block', 'com', '1');
    expect(build.codes()).toEqual(['panel-on-serial']);
    expect(build.finding('panel-on-serial')).toMatchObject({
      severity: 'danger',
      leads: ['block'],
      data: { connector: 'com', parts: ['drive-led', 'power-led', 'reset', 'power'] },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'panel' } } }],
    });
  });

  test('a switch alone would only do nothing', () => {
    const build = board.lead('power-switch-1x2', 'power').seat('power', 'com', '6');
    expect(build.finding('panel-on-serial').severity).toBe('fault');
  });

  test('on the panel header the block is right', () => {
    expect(board.lead('panel-block-2x5', 'block').seat('block', 'panel', '1').codes()).toEqual([]);
  });
});
