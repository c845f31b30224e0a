import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('the right header and the wrong pins of it', () => {
  // USB 2.0 2x5 header as listed in board product guides: 3 D−, 5 D+.
  function singles(minus: string, plus: string) {
    return bench()
      .header('usb2-2x5', 'usb')
      .lead('usb2-singles', 'reader')
      .seat('reader', 'usb', '1', { plug: 'first-vbus' })
      .seat('reader', 'usb', minus, { plug: 'first-d-minus' })
      .seat('reader', 'usb', plus, { plug: 'first-d-plus' })
      .seat('reader', 'usb', '7', { plug: 'first-ground' });
  }

  test('D− and D+ exchanged: only these two wires are named', () => {
    expect(singles('5', '3').finding('wrong-pins')).toMatchObject({
      severity: 'fault',
      leads: ['reader'],
      data: {
        part: 'first',
        meetings: [
          { terminal: 'd-minus', signal: 'usb-d-plus' },
          { terminal: 'd-plus', signal: 'usb-d-minus' },
        ],
      },
    });
  });

  test('each on its own pin is right', () => {
    expect(singles('3', '5').codes()).toEqual([]);
  });
});
