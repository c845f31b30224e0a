import { describe, expect, test } from 'vitest';
import { USUAL } from '../../../boards/circuit/corner';
import { type Device, GROUND, type Netlist } from '../../../boards/circuit/device';
import { netlistOf, pinNode } from '../../../boards/circuit/elements';
import { RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { portSupplyOf } from '../../../boards/circuit/readings/ports';
import { solve } from '../../../boards/circuit/solve';
import { bench } from './bench';

const IN_USE = { ...RUNNING, attached: true };
const ROW = 'usb2-row-1x4';

function supplyOf(made: ReturnType<typeof bench>, state = IN_USE) {
  const [part] = made.build.case.leads[0]?.parts ?? [];
  return part && portSupplyOf(made.circuit, 'lead', part)?.volts(state);
}

/** Pin table: 1 +5 V A, 3 D− A, 5 D+ A, 7 ground A (board product guides; pin 9 is the key). */
describe('a single-row USB lead on one row of a USB 2.0 header', () => {
  test('the right way: 4.75 to 5.25 V minus what fuse and wire take', () => {
    const volts = supplyOf(bench('usb2-2x5', ROW, { 1: '1', 2: '3', 3: '5', 4: '7' }));
    expect(volts?.usual).toBeGreaterThan(4.9);
    expect(volts?.high).toBeLessThanOrEqual(5.25);
  });

  test('turned end for end: reverse supply; the device’s own junction takes it until the fuse trips', () => {
    const made = bench('usb2-2x5', ROW, { 1: '7', 2: '5', 3: '3', 4: '1' });
    const volts = supplyOf(made);
    expect(volts?.usual).toBeLessThan(-0.3);
    expect(made.circuit.solution('pin.header.1', IN_USE, USUAL)?.tripped.size).toBe(1);
    const nothingIn = supplyOf(made, RUNNING);
    expect(nothingIn?.usual).toBeLessThan(-4.5);
  });

  test('one place towards the high pins: the device is without supply', () => {
    const made = bench('usb2-2x5', ROW, { 1: '3', 2: '5', 3: '7' });
    const volts = supplyOf(made);
    expect(volts === undefined || Math.abs(volts.usual) < 1).toBe(true);
    // The + wire lies on D−, the D+ wire on ground: nothing there can feed it.
    expect(made.volts('3', IN_USE)).toBeLessThan(0.1);
    expect(made.volts('7', IN_USE)).toBeLessThan(0.1);
  });

  test('one place towards the low pins: +5 V on the D− wire, through the device’s junction onto its supply', () => {
    const made = bench('usb2-2x5', ROW, { 2: '1', 3: '3', 4: '5' });
    expect(made.volts('1', IN_USE)).toBeGreaterThan(4.5);
    const line = made.circuit.volts('lead.lead.port.d-minus', IN_USE, USUAL);
    expect(line).toBeGreaterThan(4.5);
    // The + wire is on no pin: the device’s own junction brings it up from the wrong side.
    expect(made.circuit.volts('lead.lead.port.vbus', IN_USE, USUAL)).toBeGreaterThan(3.5);
    expect(made.circuit.volts('lead.lead.port.vbus', RUNNING, USUAL)).toBeUndefined();
  });
});

/** IEEE 1394a header: 7 and 8 carry +12 V where USB has ground (a board product guide). */
test('a USB lead on a 1394 header puts +12 V on the ground wire of the port', () => {
  const made = bench('ieee1394-2x5', ROW, { 1: '1', 2: '3', 3: '5', 4: '7' });
  const volts = supplyOf(made, RUNNING);
  expect(volts?.usual).toBeLessThan(-11);
  expect(made.circuit.volts('lead.lead.port.ground', RUNNING, USUAL)).toBeGreaterThan(11.4);
  // A pair of the 1394 port, terminated to ground, is all that its + wire gets.
  expect(Math.abs(made.circuit.volts('lead.lead.port.vbus', RUNNING, USUAL) ?? Number.NaN)).toBeLessThan(0.1);
});

/** 1 kΩ in the panel against 10 kΩ on the board: Front Panel I/O Connectivity Design Guide v1.3, 2.3.5. */
test('an HD audio panel pulls presence to a eleventh of its rail: 0.30 V of 3.3 V', () => {
  const made = bench('hd-audio-2x5', 'hd-audio-block-2x5', {
    1: '1',
    2: '2',
    3: '3',
    4: '4',
    5: '5',
    6: '6',
    7: '7',
    9: '9',
    10: '10',
  });
  expect(made.volts('4', RUNNING)).toBeCloseTo(3.3 / 11, 2);
});

/** AC’97 Table 6: +5 V on pin 7, where HD audio has its sense line. */
test('an HD lead on an AC’97 header puts +5 V on the sense wire, and on the returns once a jack is in', () => {
  const pins = { 1: '1', 2: '2', 3: '3', 4: '4', 5: '5', 6: '6', 7: '7', 9: '9', 10: '10' };
  const made = bench('ac97-audio-2x5', 'hd-audio-block-2x5', pins);
  expect(made.volts('6', RUNNING)).toBeLessThan(0.1);
  expect(made.volts('6', IN_USE)).toBeGreaterThan(4.5);
  expect(made.volts('10', IN_USE)).toBeGreaterThan(4.5);
  // The presence resistor lies between ground and ground.
  const amps = made.circuit.solution('pin.header.4', IN_USE, USUAL)?.amps;
  const presence = [...(amps ?? [])].find(([id]) => id.endsWith('.presence'))?.[1];
  expect(Math.abs(presence ?? Number.NaN)).toBeLessThan(1e-6);
});

/** Pairs 5-6 and 9-10 have to be joined for the rear output (Front Panel I/O Connectivity Design Guide v1.3, 2.3.4.4). */
test('an HD lead leaves 5 and 6, and 9 and 10, of an AC’97 header apart: the rear socket stays mute', () => {
  const pins = { 1: '1', 2: '2', 3: '3', 4: '4', 5: '5', 6: '6', 7: '7', 9: '9', 10: '10' };
  const hd = bench('ac97-audio-2x5', 'hd-audio-block-2x5', pins);
  const ac97 = bench('ac97-audio-2x5', 'ac97-audio-block-2x5', pins);
  for (const [out, back] of [
    ['5', '6'],
    ['9', '10'],
  ] as const) {
    expect(joined(ac97, out, back)).toBe(true);
    expect(joined(hd, out, back)).toBe(false);
  }
});

/** Whether what is fed into one pin arrives at another, with nothing plugged in at the front. */
function joined({ circuit }: ReturnType<typeof bench>, one: string, other: string): boolean {
  const devices = netlistOf(circuit.elements, RUNNING, USUAL);
  const tone: Device = {
    id: 'tone',
    kind: 'voltage',
    a: pinNode('header', one),
    b: GROUND,
    volts: 1,
    ohms: 0,
  };
  const heard = (netlist: Netlist) => solve(netlist).volts.get(pinNode('header', other)) ?? Number.NaN;
  return Math.abs(heard([...devices, tone]) - heard(devices)) > 0.5;
}

/** Early variant: +5 V on pin 4 drives 5 mA through the 1 kΩ presence resistor. */
test('on the early AC’97 header +5 V drives 5 mA through the presence resistor', () => {
  const pins = { 1: '1', 2: '2', 3: '3', 4: '4', 5: '5', 6: '6', 7: '7', 9: '9', 10: '10' };
  const made = bench('ac97-audio-2x5-early', 'hd-audio-block-2x5', pins);
  const amps = made.circuit.solution('pin.header.4', RUNNING, USUAL);
  expect([...(amps?.amps ?? [])].find(([id]) => id.endsWith('.presence'))?.[1]).toBeCloseTo(0.005, 3);
});

/** Serial header, same key as the panel: TIA-232 levels of ±5 to ±15 V behind at least 300 Ω (from memory). */
test('a drive LED on a serial header sees what a serial output lets through', () => {
  const made = bench('serial-2x5-ribbon', 'drive-led-1x2', { 1: '7', 2: '9' });
  const amps = made.partAmps('led', RUNNING);
  expect(amps.high).toBeGreaterThan(5e-3);
  expect(made.partAmps('led', RESTING).high).toBeLessThan(1e-6);
});

/** A panel block has the same key. Ribbon order of the serial header: a single-board manual (in secondary). */
test('a switch on a serial header joins two of its lines when it is pressed: 15 V behind 300 Ω at most', () => {
  const inputs = bench('serial-2x5-ribbon', 'power-switch-1x2', { 1: '6', 2: '8' });
  expect(inputs.partAmps('switch', { ...RUNNING, held: ['power'] }).high).toBeLessThan(1e-6);
  const toGround = bench('serial-2x5-ribbon', 'reset-switch-1x2', { 1: '5', 2: '9' });
  const amps = toGround.partAmps('switch', { ...RUNNING, held: ['reset'] });
  expect(amps.high).toBeGreaterThan(0.045);
  expect(amps.high).toBeLessThanOrEqual(15 / 300);
});
