import { describe, expect, test } from 'vitest';
import { circuitOf } from '../../../../boards/circuit/circuit';
import { RUNNING } from '../../../../boards/circuit/machine-state';
import { lampsOf } from '../../../../boards/circuit/readings/lamps';
import { singleRow } from '../../../../boards/library/grids';
import { plug } from '../../../../boards/library/plug-and-wires';
import { type Bench, bench } from '../harness';

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

  // The driver of the speaker pulls its pin up to the same +5 V while it is silent: the circuit's own volts.
  test('between the speaker pins it has nothing across it: it does not work, and is in no danger', () => {
    const build = board.header('speaker-1x4', 'spk').seat('led', 'spk', '1');
    const [lamp] = lampsOf(build.build, circuitOf(build.build));
    expect(lamp?.reverseVolts(RUNNING)).toBeLessThan(0.5);
    expect(build.faults()).toEqual(['wrong-function']);
  });

  test('on LED pins an LED is right', () => {
    const build = board.lead('drive-led-1x2', 'drive').seat('drive', 'panel', '1');
    expect(build.faults()).not.toContain('led-across-supply');
  });
});

describe('an LED with two plugs, of which only one may be used', () => {
  // The circuit's own current: it tells no difference between the orders, and far more than the 20 mA of data sheets.
  const amps = ({ build }: Bench) =>
    Math.max(...lampsOf(build, circuitOf(build)).map((lamp) => lamp.glow(RUNNING).amps.usual));
  const board = bench()
    .header('panel-2x5', 'panel')
    .header('usb2-2x5', 'usb')
    .lead('power-led-1x2', 'led', {
      plugs: [plug('two', '2', singleRow(2)), plug('four', '4', singleRow(4))],
      wires: [
        { from: 'led.anode', to: 'two.1', colour: 'green' },
        { from: 'led.cathode', to: 'two.2', colour: 'white' },
        { from: 'led.anode', to: 'four.1', colour: 'green' },
        { from: 'led.cathode', to: 'four.4', colour: 'white' },
      ],
    });
  const onItsPins = (made: Bench) => made.seat('led', 'panel', '2', { plug: 'two' });
  const onSupply = (made: Bench) => made.seat('led', 'usb', '1', { plug: 'four' });

  test.each([
    ['the right one first', onSupply(onItsPins(board))],
    ['the wrong one first', onItsPins(onSupply(board))],
  ] as const)(
    'one on its pins, one from +5 V to ground, %s: a danger, and nothing that works',
    (_, build) => {
      expect(amps(build)).toBeGreaterThan(0.1);
      expect(build.finding('led-across-supply')).toMatchObject({
        severity: 'danger',
        leads: ['led'],
        data: { volts: 5, reverseVolts: 0 },
      });
      expect(build.codes('led')).not.toContain('pair-split');
    },
  );
});
