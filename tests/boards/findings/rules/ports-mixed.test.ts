import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('the wires of one port on two ports of the board', () => {
  // USB 2.0 2x5 header as listed in board product guides: odd pins one port, even pins the other.
  function singles(minus: string) {
    return bench()
      .header('usb2-2x5', 'usb')
      .lead('usb2-singles', 'reader')
      .seat('reader', 'usb', '1', { plug: 'first-vbus' })
      .seat('reader', 'usb', minus, { plug: 'first-d-minus' })
      .seat('reader', 'usb', '5', { plug: 'first-d-plus' })
      .seat('reader', 'usb', '7', { plug: 'first-ground' });
  }

  test('D− of the one and D+ of the other', () => {
    expect(singles('4').finding('ports-mixed')).toMatchObject({
      severity: 'fault',
      leads: ['reader'],
      data: { part: 'first', channels: ['A', 'B'] },
    });
  });

  test('four single plugs in one row are right', () => {
    expect(singles('3').codes()).toEqual([]);
  });
});
