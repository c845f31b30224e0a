import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a fan header’s supply on another wire of the fan', () => {
  // 4-Wire PWM Controlled Fans Specification rev 1.3, Table 1: 1 ground, 2 +12 V, 3 tach, 4 PWM; 2.1.4: PWM stands 5.25 V.
  const board = bench().header('fan-1x4', 'fan');

  test('one pin too far: +12 V on the ground wire', () => {
    const build = board.lead('fan-1x3', 'rear').seat('rear', 'fan', '2');
    expect(build.faults()).toEqual(['fan-supply-on-signal', 'shifted']);
    expect(build.finding('fan-supply-on-signal')).toMatchObject({
      severity: 'danger',
      leads: ['rear'],
      data: {
        part: 'fan',
        volts: 12,
        meetings: [{ terminal: 'ground', pin: { connector: 'fan', pin: '2' } }],
      },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'fan', at: [0, 0] } } }],
    });
  });

  test('one pin short: +12 V on the tach wire', () => {
    const build = board.lead('fan-1x3', 'rear').seat('rear', 'fan', [0, -1]);
    expect(build.finding('fan-supply-on-signal').data.meetings).toMatchObject([{ terminal: 'tach' }]);
  });

  test('a three-wire fan on pins 1 to 3 of four is right', () => {
    expect(board.lead('fan-1x3', 'rear').seat('rear', 'fan', '1').codes()).toEqual([]);
  });
});
