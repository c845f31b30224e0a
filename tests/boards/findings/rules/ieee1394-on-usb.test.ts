import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a 1394 lead on a USB header', () => {
  // USB 2.0 2x5 (+5 V on 1 and 2, ground on 7 and 8, key 9) and 1394a (+12 V on 7 and 8, key 9): board product guides.
  const board = bench()
    .header('usb2-2x5', 'usb')
    .header('ieee1394-2x5', 'f1394')
    .lead('ieee1394-block-2x5', 'film');

  test('the block fits, key and all: a danger, told once', () => {
    const build = board.seat('film', 'usb', '1');
    expect(build.faults()).toEqual(['ieee1394-on-usb']);
    expect(build.finding('ieee1394-on-usb')).toMatchObject({
      severity: 'danger',
      leads: ['film'],
      data: { plug: { lead: 'film', plug: 'plug' }, connector: 'usb' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'f1394' } } }],
    });
  });

  test('on the 1394 header it is right', () => {
    expect(board.seat('film', 'f1394', '1').codes()).toEqual([]);
  });
});
