import { describe, expect, test } from 'vitest';
import { spanOf } from '../../../boards/circuit/corner';
import { BUSY, RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { levelOf } from '../../../boards/circuit/readings/level';
import { bench } from './bench';

/**
 * What mistakes on the 2x5 panel header do, each asked of the solver. The pairs and the key are from
 * the Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2; polarity from assembly notes and
 * a board manual (secondary); 330 Ω in the LED feeds is from memory, so only spans are asserted.
 */
const LOW_VOLTS = 0.8; // TTL input low, as in the ATX 3.0 design guide (336521), Table 4-11, for PS_ON#
const HIGH_VOLTS = 2.0;

const held = (button: 'power' | 'reset') => ({ ...RESTING, held: [button] as const });

describe('a switch on the panel', () => {
  test.each([
    ['6', '8'],
    ['8', '6'],
    ['6', '5'],
  ])('across %s and %s is the power button, either way round and on either ground', (a, b) => {
    const panel = bench('panel-2x5', 'power-switch-1x2', { 1: a, 2: b });
    expect(panel.volts('6', RESTING)).toBeGreaterThan(HIGH_VOLTS);
    expect(panel.volts('6', held('power'))).toBeLessThan(LOW_VOLTS);
  });

  test.each([
    ['7', '5'],
    ['7', '8'],
  ])('across %s and %s is the reset button', (a, b) => {
    const panel = bench('panel-2x5', 'reset-switch-1x2', { 1: a, 2: b });
    expect(panel.volts('7', RUNNING)).toBeGreaterThan(HIGH_VOLTS);
    expect(panel.volts('7', { ...RUNNING, held: ['reset'] })).toBeLessThan(LOW_VOLTS);
  });

  test('across 5 and 8, both ground, does nothing', () => {
    const panel = bench('panel-2x5', 'power-switch-1x2', { 1: '5', 2: '8' });
    expect(panel.partAmps('switch', held('power')).high).toBeLessThan(1e-9);
  });

  test('across 6 and 7 joins two inputs that are both pulled up: neither goes low', () => {
    const panel = bench('panel-2x5', 'power-switch-1x2', { 1: '6', 2: '7' });
    expect(panel.volts('6', held('power'))).toBeGreaterThan(HIGH_VOLTS);
    expect(panel.volts('7', held('power'))).toBeGreaterThan(HIGH_VOLTS);
  });

  test.each(['5', '6', '7', '8'])('from %s onto 9, which is not connected, does nothing', (pin) => {
    const panel = bench('panel-2x5', 'power-switch-1x2', { 1: '9', 2: pin });
    expect(panel.partAmps('switch', held('power')).high).toBeLessThan(1e-9);
    if (pin === '6' || pin === '7') expect(panel.volts(pin, held('power'))).toBeGreaterThan(HIGH_VOLTS);
  });

  test('the two switches in each other’s place exchange their buttons, and nothing is harmed', () => {
    const reset = bench('panel-2x5', 'reset-switch-1x2', { 1: '6', 2: '8' });
    const power = bench('panel-2x5', 'power-switch-1x2', { 1: '5', 2: '7' });
    expect(reset.volts('6', held('reset'))).toBeLessThan(LOW_VOLTS);
    expect(power.volts('7', { ...RUNNING, held: ['power'] })).toBeLessThan(LOW_VOLTS);
    expect(reset.partAmps('switch', held('reset')).high).toBeLessThan(0.006);
  });

  test('across an LED feed and ground draws what the feed resistor lets through, about 15 mA at 330 Ω', () => {
    const panel = bench('panel-2x5', 'power-switch-1x2', { 1: '1', 2: '5' });
    const amps = panel.partAmps('switch', { ...RUNNING, held: ['power'] });
    expect(Math.abs(amps.usual)).toBeCloseTo(5 / 330, 3);
    expect(Math.max(-amps.low, amps.high)).toBeLessThan(0.04);
  });
});

describe('an LED on the panel', () => {
  test('across 1 and 3 the right way shows drive activity and nothing else', () => {
    const panel = bench('panel-2x5', 'drive-led-1x2', { 1: '1', 2: '3' });
    expect(panel.partAmps('led', RUNNING).high).toBeLessThan(1e-6);
    expect(panel.partAmps('led', BUSY).low).toBeGreaterThan(1e-3);
  });

  test('across 2 and 4 the right way shows that the machine runs', () => {
    const panel = bench('panel-2x5', 'power-led-1x2', { 1: '2', 2: '4' });
    expect(panel.partAmps('led', RESTING).high).toBeLessThan(1e-6);
    expect(panel.partAmps('led', RUNNING).low).toBeGreaterThan(1e-3);
  });

  test('of two colours shows its other colour the wrong way round', () => {
    const other = 'part.lead.led.other';
    const right = bench('panel-2x5', 'two-colour-power-led-1x2', { 1: '2', 2: '4' });
    const turned = bench('panel-2x5', 'two-colour-power-led-1x2', { 1: '4', 2: '2' });
    expect(right.partAmps('led', RUNNING).low).toBeGreaterThan(1e-3);
    expect(Math.abs(right.partAmps('led', RUNNING, other).high)).toBeLessThan(1e-6);
    expect(turned.partAmps('led', RUNNING, other).low).toBeGreaterThan(1e-3);
    expect(Math.abs(turned.partAmps('led', RUNNING).high)).toBeLessThan(1e-6);
  });

  test('the wrong way round is dark, and sees no more than its 5 V reverse limit on a usual rail', () => {
    const panel = bench('panel-2x5', 'drive-led-1x2', { 1: '3', 2: '1' });
    for (const state of [RESTING, RUNNING, BUSY])
      expect(panel.partAmps('led', state).high).toBeLessThan(1e-6);
    const reverse = (panel.volts('1', BUSY) ?? 0) - (panel.volts('3', BUSY) ?? 0);
    expect(reverse).toBeGreaterThan(4.5);
    expect(reverse).toBeLessThanOrEqual(5);
  });

  test('from 1 or 2 to a ground is lit whenever the feed is up, busy or not', () => {
    for (const [feed, ground] of [
      ['1', '5'],
      ['2', '8'],
    ] as const) {
      const panel = bench('panel-2x5', 'drive-led-1x2', { 1: feed, 2: ground });
      expect(panel.partAmps('led', RUNNING).low).toBeGreaterThan(1e-3);
      expect(panel.partAmps('led', RESTING).high).toBeLessThan(1e-6);
    }
  });

  test('across 2 and 3, power feed and drive sink, lights on drive activity', () => {
    const panel = bench('panel-2x5', 'power-led-1x2', { 1: '2', 2: '3' });
    expect(panel.partAmps('led', RUNNING).high).toBeLessThan(1e-6);
    expect(panel.partAmps('led', BUSY).low).toBeGreaterThan(1e-3);
  });

  test.each([
    ['power', '6', '8'],
    ['reset', '7', '5'],
  ])('on the %s input clamps it: neither a sure high nor a sure low', (_, input, ground) => {
    const panel = bench('panel-2x5', 'power-led-1x2', { 1: input, 2: ground });
    const volts = spanOf((corner) => panel.volts(input, RUNNING, corner) ?? Number.NaN);
    expect(volts.usual).toBeGreaterThan(1.2);
    expect(volts.usual).toBeLessThan(2.4);
    expect(levelOf(volts)).toBe('depends');
  });
});

test('a speaker across the power pins holds the power input down for ever', () => {
  const panel = bench('panel-2x5', 'speaker-1x4', { 1: '6', 4: '8' });
  expect(panel.volts('6', RESTING)).toBeLessThan(LOW_VOLTS);
});

test('330 Ω from 5 V through a red LED of 1.9 V is about 9.4 mA (computed from the data sheet voltage)', () => {
  const panel = bench('panel-2x5', 'drive-led-1x2', { 1: '1', 2: '5' });
  // 1.9 V is the voltage at 10 mA; at 9.3 mA it is a few millivolts less, and the rail drops by its own 0.03 Ω.
  expect(panel.partAmps('led', RUNNING).usual * 1e3).toBeCloseTo((5 - 1.9) / 0.33, 0);
});

/** Front Panel I/O Connectivity Design Guide v1.3 (2005), Tables 2 and 3; the reversal of the pair read in secondary. */
describe('the power LED pair while the machine sleeps', () => {
  const ASLEEP = { ...RESTING, supply: 'asleep' } as const;
  const two = bench('panel-2x5', 'two-colour-power-led-1x2', { 1: '2', 2: '4' });
  const other = 'part.lead.led.other';

  test('a two-colour LED shows one colour running, the other asleep, and none when off', () => {
    expect(two.partAmps('led', RUNNING).low).toBeGreaterThan(1e-3);
    expect(two.partAmps('led', RUNNING, other).high).toBeLessThan(1e-6);
    expect(two.partAmps('led', ASLEEP).high).toBeLessThan(1e-6);
    expect(two.partAmps('led', ASLEEP, other).low).toBeGreaterThan(1e-3);
    expect(two.partAmps('led', RESTING, other).high).toBeLessThan(1e-6);
  });

  test('a single-colour LED is dark asleep, with less than its reverse limit across it on a usual rail', () => {
    const one = bench('panel-2x5', 'power-led-1x2', { 1: '2', 2: '4' });
    expect(one.partAmps('led', ASLEEP).high).toBeLessThan(1e-6);
    expect((one.volts('4', ASLEEP) ?? 0) - (one.volts('2', ASLEEP) ?? 0)).toBeLessThanOrEqual(5);
  });
});
