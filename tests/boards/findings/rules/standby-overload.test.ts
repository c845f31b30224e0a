import { describe, expect, test } from 'vitest';
import { numbersOf } from '../../../../boards/findings/finding-numbers';
import { wordsOf } from '../../../../boards/findings/words';
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

  test('the note sets what they may draw, from a unit load of 150 mA each, against new and old ratings', () => {
    // Unit loads: a handbook (read in secondary). 0.72 A at least: an older supply design guide, v0.9 (read in secondary).
    const two = one.header('usb3-19', 'second').lead('usb3-block', 'top').seat('top', 'second', '1');
    const found = two.finding('standby-overload');
    expect(numbersOf(found)).toEqual({ leastAmps: 0.6, amps: 3.6, mostAmps: 3, oldMostAmps: 0.72 });
    const { reason } = wordsOf(found, two.build);
    expect(reason).toContain('600\u00a0mA to 3.6\u00a0A together');
    expect(reason).toContain('rated 3\u00a0A, on old supplies as little as 720\u00a0mA');
  });

  // Common practice, no source: a wake jumper lays the sockets on standby or on the main 5 V.
  test('sockets whose wake jumper lies on the main supply take nothing from standby', () => {
    const onMain = { '1': { wakeSupply: 'main' }, '19': { wakeSupply: 'main' } } as const;
    const two = one.header('usb3-19', 'second', onMain).lead('usb3-block', 'top').seat('top', 'second', '1');
    expect(two.codes()).not.toContain('standby-overload');
    const onStandby = { '1': { wakeSupply: 'standby' }, '19': { wakeSupply: 'standby' } } as const;
    const woken = one
      .header('usb3-19', 'second', onStandby)
      .lead('usb3-block', 'top')
      .seat('top', 'second', '1');
    expect(woken.finding('standby-overload').data.ports).toBe(4);
  });

  test('two of them may not', () => {
    expect(one.codes()).not.toContain('standby-overload');
  });

  // Type-C front-panel header (from memory): the supply of its one port is on three pins. 3 times 900 mA are 2.7 A.
  test('a Type-C port takes as much as one port, on however many pins its supply comes', () => {
    const build = one.header('usb-c-front-20', 'type-c').lead('usb-c-front', 'c').seat('c', 'type-c', '1');
    expect(build.codes()).not.toContain('standby-overload');
    const more = build.header('usb3-19', 'second').lead('usb3-block', 'top').seat('top', 'second', '1');
    expect(more.finding('standby-overload').data.ports).toBe(5);
    expect(more.finding('standby-overload').data.amps).toBeCloseTo(4.5);
  });
});
