import { describe, expect, test } from 'vitest';
import { USUAL } from '../../../boards/circuit/corner';
import { GROUND } from '../../../boards/circuit/device';
import { BUSY, RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { type Path, type PathStep, pathOf } from '../../../boards/circuit/path';
import type { Piece } from '../../../boards/circuit/piece';
import { bench } from './bench';

const pin = (label: string) => ({ kind: 'pin', pin: { connector: 'header', pin: label } }) as const;
const HELD = { ...RESTING, held: ['power'] as const };

function stepsOf(path: Path): readonly PathStep[] {
  if (path.kind === 'still') throw new Error('Nothing flows');
  return path.steps;
}

/** "rail main-5v", "board 1", "wire", "part led". */
function short(piece: Piece): string {
  if (piece.kind === 'wire') return 'wire';
  if (piece.kind === 'part') return `part ${piece.part}`;
  if (piece.kind === 'hub') return `hub ${piece.unit}`;
  return piece.kind === 'rail' ? `rail ${piece.rail}` : `board ${piece.pin.pin}`;
}

describe('the loop of the drive LED while the drive is busy', () => {
  const { build } = bench('panel-2x5', 'drive-led-1x2', { 1: '1', 2: '3' });
  const steps = stepsOf(pathOf(build, pin('1'), BUSY));

  test('goes from +5 V through the resistor, pin 1, the LED and pin 3 into the output that pulls down', () => {
    expect(steps.map(({ piece }) => short(piece))).toEqual([
      'rail main-5v',
      'board 1',
      'wire',
      'part led',
      'wire',
      'board 3',
    ]);
    expect(steps.map(({ to }) => to.pin?.pin)).toEqual([
      undefined,
      '1',
      undefined,
      undefined,
      '3',
      undefined,
    ]);
  });

  // By hand: (5 V − 1.9 V) over 0.03 + 330 + 0.12 + 0.12 + 20 Ω is 8.85 mA; 1.9 V is the LED's level at
  // 10 mA, and a little less here. The LED feeds' 330 Ω are from memory, the rest common practice.
  const AMPS = (5 - 1.9) / (0.03 + 330 + 0.12 + 0.12 + 20);

  test('carries the same current all along, about 8.9 mA', () => {
    for (const { amps } of steps) {
      expect(amps).toBeCloseTo(AMPS, 4);
      expect(amps).toBeCloseTo(steps[0]?.amps ?? 0, 9);
    }
  });

  test('has the levels that Ohm’s law gives by hand, falling from the supply to ground', () => {
    const volts = steps.map(({ to }) => to.volts);
    const byHand = [5, 5 - AMPS * 330, 5 - AMPS * 330, AMPS * 20, AMPS * 20, 0];
    expect(volts.length).toBe(byHand.length);
    for (const [index, value] of volts.entries()) expect(value).toBeCloseTo(byHand[index] ?? Number.NaN, 1);
    expect(volts).toEqual(volts.toSorted((a, b) => b - a));
  });

  test('closes: it begins and ends at ground, and every step begins where the last one ended', () => {
    expect(steps[0]?.from.node).toBe(GROUND);
    expect(steps.at(-1)?.to.node).toBe(GROUND);
    expect(steps.slice(1).map(({ from }) => from)).toEqual(steps.slice(0, -1).map(({ to }) => to));
  });

  test('is the same asked at either pin, at a wire and at the LED', () => {
    for (const subject of [
      pin('3'),
      { kind: 'wire', lead: 'lead', wire: 1 } as const,
      { kind: 'part', lead: 'lead', part: 'led' } as const,
    ])
      expect(pathOf(build, subject, BUSY)).toEqual({ kind: 'flows', steps });
  });
});

describe('where nothing flows', () => {
  test('a dark LED hangs on its feed: both pins are held up by +5 V', () => {
    const { build } = bench('panel-2x5', 'drive-led-1x2', { 1: '1', 2: '3' });
    const path = pathOf(build, pin('3'), RUNNING);
    expect(path).toMatchObject({ kind: 'still', holder: { pin: { pin: '1' }, live: true } });
  });

  test('with the machine off the feed holds nothing up', () => {
    const { build } = bench('panel-2x5', 'drive-led-1x2', { 1: '1', 2: '3' });
    const path = pathOf(build, pin('1'), RESTING);
    expect(path).toMatchObject({ kind: 'still', holder: { pin: { pin: '1' }, live: false } });
    expect(path.kind === 'still' && path.volts).toBeCloseTo(0, 6);
  });

  test('the power input is held at 3.3 V by its own pull-up, wired or bare', () => {
    for (const { build } of [
      bench('panel-2x5', 'power-switch-1x2', { 1: '6', 2: '8' }),
      bench('panel-2x5', 'power-switch-1x2', { 1: '5', 2: '7' }),
    ]) {
      const path = pathOf(build, pin('6'), RESTING);
      expect(path).toMatchObject({ kind: 'still', holder: { pin: { pin: '6' }, stub: { rail: 'logic' } } });
      expect(path.kind === 'still' && path.volts).toBeCloseTo(3.3, 3);
    }
  });

  test('a missing pin has no level, and nothing holds it', () => {
    const { build } = bench('panel-2x5', 'power-switch-1x2', { 1: '6', 2: '8' });
    expect(pathOf(build, pin('10'), RESTING)).toEqual({ kind: 'still', volts: undefined, holder: undefined });
  });
});

describe('where currents meet', () => {
  // By hand: 3.3 V over 10 kΩ is 0.33 mA through a pressed power button; both values are common practice.
  test('the pressed power button carries the pull-up current of its input to ground', () => {
    const { build } = bench('panel-2x5', 'power-switch-1x2', { 1: '6', 2: '8' });
    const steps = stepsOf(pathOf(build, pin('6'), HELD));
    expect(steps.map(({ piece }) => short(piece))).toEqual([
      'rail logic',
      'board 6',
      'wire',
      'part switch',
      'wire',
      'board 8',
    ]);
    for (const { amps } of steps) expect(amps).toBeCloseTo(3.3 / 10_000, 6);
  });

  test('a supply through a button into a weaker one ends in that: 1.7 V over 10.33 kΩ', () => {
    const { build } = bench('panel-2x5', 'power-switch-1x2', { 1: '1', 2: '6' });
    const steps = stepsOf(pathOf(build, pin('6'), { ...RUNNING, held: ['power'] }));
    expect(steps.map(({ piece }) => short(piece)).slice(-2)).toEqual(['board 6', 'rail logic']);
    for (const { amps } of steps) expect(amps).toBeCloseTo((5 - 3.3) / (330 + 10_000), 7);
  });

  // USB 2.0, 7.1.5: 1.5 kΩ up in the device and 15 kΩ down in the host, from memory; the load is a usual one.
  test('at a USB device the load is followed, and what goes another way is missing after it (Kirchhoff)', () => {
    const { build, circuit } = bench('usb2-2x5', 'usb2-row-1x4', { 1: '1', 2: '3', 3: '5', 4: '7' });
    const state = { ...RESTING, attached: true };
    const steps = stepsOf(pathOf(build, pin('1'), state));
    const [before, load] = [steps.find(({ piece }) => piece.kind === 'wire'), steps.find(isPart)];
    const pullUp = circuit.amps('part.lead.port', 'part.lead.port.pull', state, USUAL);
    expect(pullUp).toBeCloseTo(5 / (1500 + 15_000), 4);
    expect(load?.amps).toBeCloseTo(5 / 50, 2);
    expect((before?.amps ?? 0) - (load?.amps ?? 0)).toBeCloseTo(pullUp, 9);
  });
});

function isPart({ piece }: PathStep): boolean {
  return piece.kind === 'part';
}
