import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('front sockets that are live while the machine is off', () => {
  // 900 mA a USB 3 port (handbook), +5 V standby 3 A recommended (ATX 3.0 design guide 336521).
  const one = bench().header('usb3-19', 'first').lead('usb3-block', 'front').seat('front', 'first', '1');

  test('four USB 3 ports may draw 3.6 A of the 3 A that standby gives', () => {
    const two = one.header('usb3-19', 'second').lead('usb3-block', 'top').seat('top', 'second', '1');
    expect(two.finding('standby-overload')).toMatchObject({
      severity: 'note',
      leads: [],
      data: { ports: 4, mostAmps: 3 },
    });
    expect(two.finding('standby-overload').data.amps).toBeCloseTo(3.6);
  });

  test('two of them may not', () => {
    expect(one.codes()).not.toContain('standby-overload');
  });
});
