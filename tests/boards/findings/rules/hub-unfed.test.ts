import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

const hub = bench()
  .header('fan-1x4', 'sysfan')
  .unit('fan-hub-header', 'hub')
  .lead('fan-1x4', 'rear')
  .seat('rear', 'hub-fan-1', '1');

describe('fans on a hub', () => {
  test('whose tail lies loose do not turn: a fault', () => {
    expect(hub.finding('hub-unfed')).toMatchObject({ severity: 'fault', data: { unit: 'hub', fans: 1 } });
  });

  test('turn with its tail on a header', () => {
    expect(hub.seat('hub-tail', 'sysfan', '1', { plug: 'header' }).faults()).toEqual([]);
  });

  test('of a hub fed by the supply do not turn by the header alone: its tail has no +12 V wire', () => {
    const fed = bench()
      .header('fan-1x4', 'sysfan')
      .unit('supply-fixed', 'psu')
      .unit('fan-hub-supply', 'hub')
      .lead('fan-1x4', 'rear')
      .seat('rear', 'hub-fan-1', '1')
      .seat('hub-tail', 'sysfan', '1', { plug: 'header' });
    expect(fed.codes()).toContain('hub-unfed');
    expect(fed.seat('psu-sata', 'hub-power', '1', { plug: 'first' }).codes()).not.toContain('hub-unfed');
  });

  // 4-Wire PWM Controlled Fans Specification rev 1.3, Table 1: supply on 2, ground on 1.
  test('are told when their plug is one pin off, as on a board', () => {
    const off = bench()
      .header('fan-1x4', 'sysfan')
      .unit('fan-hub-header', 'hub')
      .seat('hub-tail', 'sysfan', '1', { plug: 'header' })
      .lead('fan-1x3', 'rear')
      .seat('rear', 'hub-fan-1', '2');
    expect(off.finding('fan-supply-on-signal').severity).toBe('danger');
  });
});
