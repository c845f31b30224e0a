import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a plug one column or one row off', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2: the pairs; polarity from assembly notes.
  const board = bench().header('panel-2x5', 'panel').lead('drive-led-1x2', 'drive');

  test('one column too far to the right: its place lies to the left', () => {
    const build = board.seat('drive', 'panel', '3');
    expect(build.codes('drive')).toEqual(['shifted']);
    expect(build.finding('shifted')).toMatchObject({
      severity: 'fault',
      leads: ['drive'],
      data: { plug: { lead: 'drive', plug: 'plug' }, connector: 'panel', toward: 'left' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'panel', at: [1, 0], turn: 0 } } }],
    });
  });

  test('half past the edge: its place lies to the right', () => {
    expect(board.seat('drive', 'panel', [1, -1]).finding('shifted').data.toward).toBe('right');
  });

  test('one row off: a USB plug on both rows of nothing', () => {
    // USB 2.0 2x5 header as listed in board product guides.
    const usb = bench()
      .header('usb2-2x5', 'usb')
      .lead('usb2-block-2x5', 'front')
      .seat('front', 'usb', [2, 0]);
    expect(usb.finding('shifted').data.toward).toBe('top');
  });

  test('the place next door that is another function’s is no slip of the hand', () => {
    const reset = board.lead('reset-switch-1x2', 'reset').seat('reset', 'panel', '6');
    expect(reset.faults()).toEqual(['wrong-function']);
  });

  test('on its pins it is right', () => {
    expect(board.seat('drive', 'panel', '1').codes('drive')).toEqual([]);
  });
});
