import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a fan without ground or supply', () => {
  // 4-Wire PWM Controlled Fans Specification rev 1.3, Table 1: 1 ground, 2 +12 V, 3 tach, 4 PWM; 2.1.4: PWM stands 5.25 V.
  const board = bench().header('fan-1x4', 'fan');

  test('a two-wire fan one pin short: its supply wire is on ground', () => {
    const build = board.lead('fan-1x2', 'old').seat('old', 'fan', [0, -1]);
    expect(build.finding('fan-unpowered')).toMatchObject({
      severity: 'fault',
      leads: ['old'],
      data: { part: 'fan', meetings: [{ terminal: 'supply', signal: 'ground' }] },
    });
  });

  test('on tach and PWM it does not turn either', () => {
    expect(board.lead('fan-1x2', 'old').seat('old', 'fan', '3').faults()).toContain('fan-unpowered');
  });

  test('on ground and +12 V it turns', () => {
    expect(board.lead('fan-1x2', 'old').seat('old', 'fan', '1').codes()).toEqual([]);
  });
});
