import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('an LED between an input and ground', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2; the pull-ups of its 2.2.5 are from memory.
  const board = bench().header('panel-2x5', 'panel').lead('drive-led-1x2', 'drive');

  test('a drive LED on the power switch pins does not light and may hold the input', () => {
    const build = board.seat('drive', 'panel', '6');
    expect(build.codes('drive')).toEqual(['wrong-function', 'led-on-input']);
    expect(build.finding('led-on-input')).toMatchObject({
      severity: 'doubt',
      leads: ['drive'],
      data: { part: 'led', job: 'power-switch' },
    });
  });

  test('on its own pins it holds nothing', () => {
    expect(board.seat('drive', 'panel', '1').codes('drive')).toEqual([]);
  });
});
