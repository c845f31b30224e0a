import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('supply and ground of a port in each other’s place', () => {
  // USB 2.0 2x5 header, board product guides: 1 +5 V, 3 D−, 5 D+, 7 ground, 9 key; worked out from that.
  const board = bench().header('usb2-2x5', 'usb').lead('usb2-row-1x4', 'reader');

  test('a single-row plug turned end for end: a danger, told once', () => {
    const build = board.seat('reader', 'usb', '7', { turn: 180 });
    expect(build.codes()).toEqual(['supply-reversed']);
    expect(build.finding('supply-reversed')).toMatchObject({
      severity: 'danger',
      leads: ['reader'],
      data: {
        part: 'port',
        volts: 5,
        meetings: [
          { terminal: 'ground', pin: { connector: 'usb', pin: '1' }, signal: 'usb-vbus' },
          { terminal: 'vbus', pin: { connector: 'usb', pin: '7' }, signal: 'ground' },
        ],
      },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'usb' } } }],
    });
  });

  test('+5 V end on pin 1 is right, and so is the other row', () => {
    expect(board.seat('reader', 'usb', '1').codes()).toEqual([]);
    expect(board.seat('reader', 'usb', '2').codes()).toEqual([]);
  });
});
