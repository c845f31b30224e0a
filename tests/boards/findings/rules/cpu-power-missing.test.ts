import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

const fed = bench().unit('supply-modular-ash', 'ash').header('cpu-power-2x4', 'cpu');

// ATX 3.0 power supply design guide (336521), Table 5-8: the CPU's +12 V has a connector of its own.
describe('the CPU’s power', () => {
  test('without a plug: a fault', () => {
    expect(fed.finding('cpu-power-missing')).toMatchObject({ severity: 'fault', data: { plugged: false } });
  });

  test('a plug with nothing at its other end: a fault', () => {
    const loose = fed.seat('ash-cpu', 'cpu', '1', { plug: 'board' });
    expect(loose.finding('cpu-power-missing')).toMatchObject({ severity: 'fault', data: { plugged: true } });
  });

  test('from the outlet to the socket it is nothing', () => {
    const whole = fed
      .seat('ash-cpu', 'cpu', '1', { plug: 'board' })
      .seat('ash-cpu', 'ash-power-1', '1', { plug: 'supply' });
    expect(whole.codes()).toEqual([]);
  });

  test('four of eight pins: a doubt, and a second socket left: a note', () => {
    const two = fed
      .header('cpu-power-2x4', 'cpu2')
      .lead('cpu-power-cable-4-and-4', 'split')
      .seat('split', 'ash-power-1', '1', { plug: 'supply' })
      .seat('split', 'cpu', '1', { plug: 'first' });
    expect(two.build.seats).toHaveLength(2);
    const found = two.all('cpu-power-missing').map(({ severity, data }) => [severity, data.connector]);
    expect(found).toEqual([
      ['doubt', 'cpu'],
      ['note', 'cpu2'],
    ]);
  });
});
