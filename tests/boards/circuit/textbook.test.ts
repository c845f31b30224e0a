import { expect, test } from 'vitest';
import type { DiodeModel, Netlist } from '../../../boards/circuit/device';
import { THERMAL_VOLTS } from '../../../boards/circuit/diode';
import { solve } from '../../../boards/circuit/solve';

const red: DiodeModel = { saturationAmps: 1e-18, ideality: 2, seriesOhms: 0 };

test('a Wheatstone bridge out of balance', () => {
  const bridge: Netlist = [
    { id: 'v', kind: 'voltage', a: 'top', b: '0', volts: 10, ohms: 0 },
    { id: 'r1', kind: 'resistor', a: 'top', b: 'left', ohms: 100 },
    { id: 'r2', kind: 'resistor', a: 'left', b: '0', ohms: 200 },
    { id: 'r3', kind: 'resistor', a: 'top', b: 'right', ohms: 300 },
    { id: 'r4', kind: 'resistor', a: 'right', b: '0', ohms: 400 },
    { id: 'g', kind: 'resistor', a: 'left', b: 'right', ohms: 50 },
  ];
  const s = solve(bridge);
  // Thevenin: open-circuit voltage 10*(200/300 - 400/700), resistance 100||200 + 300||400
  const vth = 10 * (200 / 300 - 400 / 700);
  const rth = (100 * 200) / 300 + (300 * 400) / 700;
  expect(s.amps.get('g')).toBeCloseTo(vth / (rth + 50), 10);
});

/** Principal branch of Lambert W by Halley's method. */
function lambertW(x: number): number {
  let w = Math.log1p(x);
  for (let i = 0; i < 60; i += 1) {
    const e = Math.exp(w);
    w -= (w * e - x) / (e * (w + 1) - ((w + 2) * (w * e - x)) / (2 * w + 2));
  }
  return w;
}

/**
 * Two sources drive one node through a resistor each, a third resistor loads it: each source alone,
 * the other replaced by a wire, and the sum (superposition; Nilsson and Riedel, Electric Circuits,
 * chapter 4; from memory).
 */
test('what two sources do together is the sum of what each does alone', () => {
  const driven = (one: number, other: number): Netlist => [
    { id: 'one', kind: 'voltage', a: 'left', b: '0', volts: one, ohms: 0 },
    { id: 'r1', kind: 'resistor', a: 'left', b: 'node', ohms: 6 },
    { id: 'other', kind: 'voltage', a: 'right', b: '0', volts: other, ohms: 0 },
    { id: 'r2', kind: 'resistor', a: 'right', b: 'node', ohms: 12 },
    { id: 'load', kind: 'resistor', a: 'node', b: '0', ohms: 4 },
  ];
  const at = (one: number, other: number) => solve(driven(one, other)).volts.get('node') ?? Number.NaN;
  // 12 Ω beside 4 Ω is 3 Ω, below 6 Ω; 6 Ω beside 4 Ω is 2.4 Ω, below 12 Ω.
  const [alone, other] = [18 * (3 / 9), 24 * (2.4 / 14.4)];
  expect(at(18, 0)).toBeCloseTo(alone, 12);
  expect(at(0, 24)).toBeCloseTo(other, 12);
  expect(at(18, 24)).toBeCloseTo(alone + other, 12);
});

test('a Wheatstone bridge in balance: nothing flows across it, whatever it is bridged with', () => {
  const s = solve([
    { id: 'v', kind: 'voltage', a: 'top', b: '0', volts: 10, ohms: 1 },
    { id: 'r1', kind: 'resistor', a: 'top', b: 'left', ohms: 120 },
    { id: 'r2', kind: 'resistor', a: 'left', b: '0', ohms: 330 },
    { id: 'r3', kind: 'resistor', a: 'top', b: 'right', ohms: 240 },
    { id: 'r4', kind: 'resistor', a: 'right', b: '0', ohms: 660 },
    { id: 'g', kind: 'resistor', a: 'left', b: 'right', ohms: 0.1 },
  ]);
  expect(Math.abs(s.amps.get('g') ?? Number.NaN)).toBeLessThan(1e-12);
});

test('diode and resistor by Lambert W', () => {
  const s = solve([
    { id: 'v', kind: 'voltage', a: 'feed', b: '0', volts: 5, ohms: 330 },
    { id: 'd', kind: 'diode', a: 'feed', b: '0', model: red },
  ]);
  const nvt = 2 * THERMAL_VOLTS;
  const i = (nvt / 330) * lambertW(((1e-18 * 330) / nvt) * Math.exp((5 + 330 * 1e-18) / nvt)) - 1e-18;
  expect(s.amps.get('d')).toBeCloseTo(i, 9);
});
