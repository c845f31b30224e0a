import { describe, expect, it } from 'vitest';
import type { PinReading } from '../../../../boards/document/pin-reading';
import { contradictionsIn } from '../../../../boards/pinout/meter/contradictions';
import { identifyPins } from '../../../../boards/pinout/meter/identify';
import { contradictionWords } from '../../../../boards/pinout/meter/words';
import { grid, posts } from '../../fixtures/bench';

const NBSP = '\u00a0';
const ground: PinReading = { kind: 'ohms', pin: '1', ohms: 0.2 };
const live: PinReading = { kind: 'volts', pin: '1', supply: 'running', volts: 5 };
const off: PinReading = { kind: 'volts', pin: '1', supply: 'standby', volts: 0 };
const supply: PinReading = { kind: 'volts', pin: '2', supply: 'running', volts: 12 };
const beep: PinReading = { kind: 'continuity', pins: ['1', '2'], joined: true };

const told = (...readings: readonly PinReading[]) => contradictionsIn(readings, (pin) => Number(pin) <= 10);

describe('readings that cannot all be true', () => {
  it('are 0 Ω and 5 V at one pin, and just these two of the three there', () => {
    expect(told(off, ground, live)).toEqual([{ why: 'one-pin', readings: [1, 2], pins: ['1'] }]);
    expect(told(ground, off)).toEqual([]);
    expect(told(off, live)).toEqual([]);
  });

  it('are a beep between a ground and +12 V, each plausible by itself', () => {
    expect(told(ground, supply)).toEqual([]);
    expect(told(supply, { ...ground, pin: '3' }, ground, beep)).toEqual([]);
    const apart: PinReading = { ...beep, joined: false };
    const other: PinReading = { kind: 'ohms', pin: '2', ohms: 0.3 };
    expect(told(ground, other, beep)).toEqual([]);
    expect(told(ground, other, apart)).toEqual([{ why: 'two-pins', readings: [0, 1, 2], pins: ['1', '2'] }]);
  });

  it('are two readings of one resistance far apart, and not two that differ by the meter', () => {
    const pulled = (ohms: number): PinReading => ({ kind: 'ohms', pin: '4', ohms });
    expect(told(pulled(10_000), pulled(10_700))).toEqual([]);
    expect(told(pulled(10_000), pulled(2_000))).toEqual([{ why: 'one-pin', readings: [0, 1], pins: ['4'] }]);
  });

  it('are a level that no pin has, and a pin that does not stand', () => {
    expect(told({ ...live, volts: 48 })).toEqual([{ why: 'no-such-reading', readings: [0], pins: ['1'] }]);
    expect(told({ ...ground, pin: '11' })).toEqual([{ why: 'no-pin-there', readings: [0], pins: ['11'] }]);
  });

  it('are told in words, with the fewest to measure again', () => {
    const readings = [ground, live, { ...live, supply: 'standby' as const }];
    const result = identifyPins({ ...posts('panel', grid(2, 5)), readings });
    if (!result.ok) throw new Error(result.problem.code);
    const { contradictions, suspects } = result.value;
    expect(contradictions.map((one) => one.readings)).toEqual([
      [0, 1],
      [0, 2],
    ]);
    expect(suspects).toEqual([[0], [1, 2]]);
    const [first] = contradictions;
    expect(first && contradictionWords(first, readings)).toBe(
      `These cannot all be true: Resistance from pin${NBSP}1 to ground: 0.2${NBSP}Ω; Voltage at pin${NBSP}1, running: 5${NBSP}V. Measure them again.`,
    );
  });
});
