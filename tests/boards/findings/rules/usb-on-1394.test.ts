import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a USB lead on a 1394 header', () => {
  // USB 2.0 2x5 (+5 V on 1 and 2, ground on 7 and 8, key 9) and 1394a (+12 V on 7 and 8, key 9): board product guides.
  const board = bench()
    .header('usb2-2x5', 'usb')
    .header('ieee1394-2x5', 'f1394')
    .lead('usb2-block-2x5', 'front');

  test('the block fits, key and all, and its grounds meet +12 V: a danger, told once', () => {
    const build = board.seat('front', 'f1394', '1');
    expect(build.codes()).toEqual(['usb-on-1394']);
    expect(build.finding('usb-on-1394')).toMatchObject({
      severity: 'danger',
      leads: ['front'],
      data: { plug: { lead: 'front', plug: 'plug' }, connector: 'f1394' },
      remedies: [
        { command: { name: 'seat-plug', args: { lead: 'front', connector: 'usb', at: [0, 0], turn: 0 } } },
      ],
    });
  });

  test('on the USB header it is right', () => {
    expect(board.seat('front', 'usb', '1').codes()).toEqual([]);
  });
});
