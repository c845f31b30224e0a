import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a supply on a wire that is not made for it', () => {
  // USB 2.0 2x5 header, board product guides: 1 +5 V, 3 D−, 5 D+, 7 ground, 9 key; worked out from that.
  const board = bench().header('usb2-2x5', 'usb');

  test('one column off towards pin 1: +5 V on the D− wire, and the plug is told to be shifted', () => {
    const build = board.lead('usb2-row-1x4', 'reader').seat('reader', 'usb', [1, -1]);
    expect(build.codes()).toEqual(['supply-on-wire', 'shifted']);
    expect(build.finding('supply-on-wire')).toMatchObject({
      severity: 'danger',
      leads: ['reader'],
      data: {
        part: 'port',
        volts: 5,
        meetings: [{ terminal: 'd-minus', pin: { pin: '1' }, signal: 'usb-vbus' }],
      },
    });
  });

  test('a row of five turned round puts its shield on +5 V', () => {
    const build = board.lead('usb2-row-1x5', 'reader').seat('reader', 'usb', [1, 4], { turn: 180 });
    expect(build.finding('supply-on-wire').data.meetings).toMatchObject([{ terminal: 'shield' }]);
  });

  test('one column off towards the key leaves the port unpowered, and nothing is harmed', () => {
    const build = board.lead('usb2-row-1x4', 'reader').seat('reader', 'usb', '3');
    expect(build.codes()).toEqual(['shifted']);
  });

  test('+5 V on the +5 V wire is right', () => {
    expect(board.lead('usb2-row-1x4', 'reader').seat('reader', 'usb', '1').codes()).toEqual([]);
  });
});
