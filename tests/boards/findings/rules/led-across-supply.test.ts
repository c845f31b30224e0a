import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('an LED on a bare supply', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.5: the series resistor is on the board (from memory).
  const board = bench()
    .header('usb2-2x5', 'usb')
    .header('panel-2x5', 'panel')
    .lead('drive-led-1x4', 'led', {
      wires: [
        { from: 'led.anode', to: 'plug.1', colour: 'red' },
        { from: 'led.cathode', to: 'plug.4', colour: 'white' },
      ],
    });

  test('from +5 V to ground it has no resistor: a danger', () => {
    expect(board.seat('led', 'usb', '1').finding('led-across-supply')).toMatchObject({
      severity: 'danger',
      leads: ['led'],
      data: { part: 'led', volts: 5, reverseVolts: 0 },
    });
  });

  test('the other way round it stays dark, and is told as well', () => {
    expect(
      board.seat('led', 'usb', '7', { turn: 180 }).finding('led-across-supply').data.reverseVolts,
    ).toBeCloseTo(5.25, 1);
  });

  test('on LED pins an LED is right', () => {
    const build = board.lead('drive-led-1x2', 'drive').seat('drive', 'panel', '1');
    expect(build.faults()).not.toContain('led-across-supply');
  });
});
