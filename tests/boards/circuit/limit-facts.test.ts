import { describe, expect, test } from 'vitest';
import { CORNERS, type Corner, type Span, spanOf, USUAL } from '../../../boards/circuit/corner';
import { type Device, GROUND } from '../../../boards/circuit/device';
import { pinElement, pinNode } from '../../../boards/circuit/elements';
import { type MachineState, RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { voltsBetween } from '../../../boards/circuit/readings/volts-between';
import { solve } from '../../../boards/circuit/solve';
import type { SignalId } from '../../../boards/signals/signals';
import { bench } from './bench';

/** What published limits say, asked of the solver over all corners of the ranges. */
const UNPLUGGED: MachineState = { ...RESTING, supply: 'unplugged' };
const IN_USE = { ...RUNNING, attached: true };
const PIN = pinNode('header', '1');

/** A single board pin with one more device from it to ground. */
function alone(signal: SignalId, state: MachineState, extra?: Device) {
  const pin = pinElement('header', { pin: '1', signal });
  const at = (corner: Corner) => solve([...pin.devices(state, corner), ...(extra ? [extra] : [])]);
  return {
    volts: spanOf((corner) => at(corner).volts.get(PIN) ?? Number.NaN),
    amps: spanOf((corner) => at(corner).amps.get('extra') ?? Number.NaN),
  };
}

const heldAt = (volts: number): Device => ({
  id: 'extra',
  kind: 'voltage',
  a: PIN,
  b: GROUND,
  volts,
  ohms: 0,
});

/** ATX 3.0 multi-rail power supply design guide (336521), Table 4-11 (read). */
describe('PS_ON#', () => {
  test('left open stands at 2.0 to 5.25 V as soon as there is standby power', () => {
    const { low, high } = alone('ps-on', RESTING).volts;
    expect(low).toBeGreaterThanOrEqual(2);
    expect(high).toBeLessThanOrEqual(5.25);
    expect(alone('ps-on', UNPLUGGED).volts.high).toBeLessThan(0.1);
  });

  test('pulled to 0.4 V gives no more than 1.6 mA, which is what a pull-up of about 3 kΩ to 5.25 V lets through', () => {
    const { low, high } = alone('ps-on', RESTING, heldAt(0.4)).amps;
    expect(low).toBeGreaterThan(0);
    expect(high * 1e3).toBeLessThanOrEqual(1.6 + 0.001);
    expect(high * 1e3).toBeCloseTo((5.25 - 0.4) / 3.03, 2);
  });

  test('a cap to ground pulls it below 0.8 V with any pull-up allowed: the supply starts', () => {
    const made = bench('main-power-24', 'jumper-cap-1x2', { 1: '16', 2: '17' });
    const volts = CORNERS.map((corner) => made.volts('16', RESTING, corner) ?? Number.NaN);
    expect(Math.max(...volts)).toBeLessThan(0.8);
  });
});

/** 4-Wire PWM Controlled Fans Specification rev 1.3 (2005), 2.1.1 to 2.1.4 (read). */
describe('a fan with four wires on its header', () => {
  const fan = bench('fan-1x4', 'fan-1x4', { 1: '1', 2: '2', 3: '3', 4: '4' });
  const volts = (pin: string): Span => spanOf((corner) => fan.volts(pin, RUNNING, corner) ?? Number.NaN);

  test('gets 12 V ± 5 %', () => {
    expect(volts('2').low).toBeGreaterThanOrEqual(11.4 - 0.4);
    expect(volts('2').high).toBeLessThanOrEqual(12.6);
    expect(volts('2').usual).toBeGreaterThan(11.4);
  });

  test('draws 1.5 A at most, and nothing while the machine is off', () => {
    expect(fan.partAmps('fan', RUNNING).high).toBeLessThanOrEqual(1.5);
    expect(fan.partAmps('fan', RESTING).high).toBeLessThan(1e-3);
  });

  test('has its tach line pulled up to 12 V, 12.6 V at most', () => {
    expect(volts('3').usual).toBeCloseTo(12, 0);
    expect(volts('3').high).toBeLessThanOrEqual(12.6);
  });

  test('pulls its PWM line up itself: 5.25 V at most when open, 5 mA at most to ground', () => {
    const own = voltsBetween(fan.circuit, 'lead.lead.fan.pwm', 'lead.lead.fan.ground', RUNNING);
    expect(own?.usual).toBeGreaterThan(3);
    expect(own?.high).toBeLessThanOrEqual(5.25);
    const shorted = bench('fan-1x4', 'fan-1x4', { 1: '1', 2: '2', 4: '1' });
    expect(shorted.partAmps('fan', RUNNING, 'part.lead.fan.pwm').high).toBeLessThanOrEqual(5e-3);
  });

  test('a board that pulls PWM down with 5 mA stays below 0.8 V', () => {
    const sink: Device = { id: 'sink', kind: 'open-drain', a: PIN, b: GROUND, on: true, onOhms: 160 };
    const push: Device = { id: 'push', kind: 'current', a: GROUND, b: PIN, amps: 5e-3 };
    expect(solve([sink, push]).volts.get(PIN)).toBeCloseTo(0.8, 9);
  });
});

/** 500 mA for each port (a board manual, read in secondary); 4.75 to 5.25 V (USB 2.0, 7.2.2, in secondary). */
describe('a USB 2.0 port on its row', () => {
  const row = { 1: '1', 2: '3', 3: '5', 4: '7' };
  const port = bench('usb2-2x5', 'usb2-row-1x4', row);

  test('is never given more than 5.25 V, and no less than 4.75 V on a usual board', () => {
    const volts = spanOf((corner) => port.volts('1', IN_USE, corner) ?? Number.NaN);
    expect(volts.high).toBeLessThanOrEqual(5.25);
    expect(volts.usual).toBeGreaterThanOrEqual(4.75);
  });

  test('a device within its 500 mA trips no fuse', () => {
    expect(port.partAmps('port', IN_USE).high).toBeLessThanOrEqual(0.5);
    for (const corner of CORNERS)
      expect(port.circuit.solution(pinNode('header', '1'), IN_USE, corner)?.tripped.size).toBe(0);
  });

  test('a short trips it, and then only a trickle is left; its ceiling is 5 A (from memory)', () => {
    const made = bench('usb2-2x5', 'jumper-cap-1x2', { 1: '1', 2: '7' });
    const id = pinNode('header', '1');
    // Not at every corner: a poor contact of 2 Ω keeps the current below what trips the largest fuse.
    for (const corner of CORNERS.slice(0, 3)) {
      const { tripped, amps } = made.circuit.solution(id, RESTING, corner) ?? {};
      expect(tripped?.size).toBe(1);
      expect(Math.abs(amps?.get('part.lead.cap') ?? Number.NaN)).toBeLessThan(0.06);
      const fuse = made.circuit
        .element(id)
        ?.devices(RESTING, corner)
        .find(({ kind }) => kind === 'fuse');
      expect(fuse?.kind === 'fuse' && fuse.tripAmps).toBeLessThanOrEqual(5);
    }
  });
});

/** 1 kΩ against 10 kΩ: 0.09 of the rail (Front Panel I/O Connectivity Design Guide v1.3, 2.3.5; read). */
test('presence with a panel fitted is a low with every resistor of 5 %, and a high without', () => {
  const fitted = bench('hd-audio-2x5', 'hd-audio-block-2x5', { 2: '2', 4: '4' });
  const volts = spanOf((corner) => fitted.volts('4', RUNNING, corner) ?? Number.NaN);
  expect(volts.usual / 3.3).toBeCloseTo(1 / 11, 3);
  expect(volts.high).toBeLessThan(0.8);
  const open = bench('hd-audio-2x5', 'hd-audio-block-2x5', { 4: '4' });
  expect(open.circuit.volts(pinNode('header', '4'), RUNNING, USUAL)).toBeCloseTo(3.3, 2);
});
