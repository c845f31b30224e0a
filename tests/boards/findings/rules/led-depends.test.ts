import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('an LED on its own pins', () => {
  // 5 V through 10 kΩ and about 2 V of LED: 0.3 mA (Ohm's law). From about 1 mA on it is plainly lit: common practice.
  const fed = (ohms: number) =>
    bench()
      .header('panel-2x5', 'panel', { '1': { values: [{ parameter: 'led-feed-ohms', value: ohms }] } })
      .lead('drive-led-1x2', 'drive')
      .seat('drive', 'panel', '1');

  test('behind 10 kΩ that the sheet states it is dim', () => {
    const found = fed(10_000).finding('led-depends');
    expect(found).toMatchObject({ severity: 'doubt', leads: ['drive'], data: { part: 'led', least: 'dim' } });
    expect(found.data.amps.usual).toBeCloseTo(0.0003, 4);
  });

  test('behind 1 MΩ it is dark', () => {
    expect(fed(1_000_000).finding('led-depends').data.least).toBe('dark');
  });

  // No current flows through one wire: the circuit has no way round.
  test('with one of two single plugs on its pin nothing is said of brightness, nor that its place is not free', () => {
    const half = bench()
      .header('panel-2x5', 'panel')
      .lead('power-led-singles', 'power')
      .seat('power', 'panel', '2', { plug: 'plus' });
    expect(half.codes('power')).toEqual(['lead-left-over']);
  });

  test('a plug that hangs over with both of its wires is told by the plug alone', () => {
    const over = bench()
      .header('panel-2x5', 'panel')
      .lead('drive-led-1x4', 'drive')
      .seat('drive', 'panel', [1, -2]);
    expect(over.codes('drive')).toEqual(['contact-off-pins']);
  });

  test('behind anything usual it is lit, and nothing is said', () => {
    expect(fed(330).codes('drive')).toEqual([]);
  });
});
