import { describe, expect, test } from 'vitest';
import { circuitOf } from '../../../boards/circuit/circuit';
import { spanOf } from '../../../boards/circuit/corner';
import { pinNode } from '../../../boards/circuit/elements';
import { type MachineState, RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { lampOf } from '../../../boards/circuit/readings/lamps';
import type { Pin } from '../../../boards/document/connector';
import type { Part } from '../../../boards/document/lead';
import { LAMP_COLOURS, type LampColour } from '../../../boards/signals/lamp-colours';
import { type Bench, bench } from './bench';

/** The same bench with something more known of its part, or of one of its pins. */
function knowing({ build }: Bench, part: Partial<Part>, pin: Partial<Pin> = {}) {
  const connectors = build.board.connectors.map((one) => ({
    ...one,
    pins: one.pins.map((each) => (each.pin === pin.pin ? { ...each, ...pin } : each)),
  }));
  const leads = build.case.leads.map((lead) => ({
    ...lead,
    parts: lead.parts.map((one) => ({ ...one, ...part })),
  }));
  const known = { ...build, board: { ...build.board, connectors }, case: { ...build.case, leads } };
  return { circuit: circuitOf(known), parts: leads[0]?.parts ?? [] };
}

describe('the colour of an LED', () => {
  const lit = bench('panel-2x5', 'power-led-1x2', { 1: '2', 2: '4' });
  const milliamps = (colour?: LampColour) => {
    const { circuit, parts } = knowing(lit, colour ? { colour } : {});
    const lamp = parts[0] && lampOf(circuit, 'lead', parts[0]);
    const { usual, low, high } = lamp?.glow(RUNNING).amps ?? { usual: 0, low: 0, high: 0 };
    return { usual: usual * 1e3, low: low * 1e3, high: high * 1e3 };
  };

  /**
   * 330 Ω from 5 V: red of 1.9 V 9.4 mA, blue of 3.2 V 5.5 mA (computed from typical forward voltages of
   * a reference page, read in secondary; the 330 Ω is from memory). The output that pulls the LED down
   * adds 20 Ω here, so a little less flows.
   */
  test.each([
    ['red', 1.9],
    ['green', 2.2],
    ['blue', 3.2],
  ] as const)('%s lets flow what is left above %f V through 350 Ω', (colour, forward) => {
    expect(milliamps(colour).usual).toBeCloseTo((5 - forward) / 0.35, 0);
  });

  test('where it is not known every colour is reckoned with', () => {
    const unknown = milliamps();
    for (const colour of LAMP_COLOURS) {
      const { low, high } = milliamps(colour);
      expect(low, colour).toBeGreaterThanOrEqual(unknown.low);
      expect(high, colour).toBeLessThanOrEqual(unknown.high);
    }
  });

  test('where it is known less is left open', () => {
    const unknown = milliamps();
    const red = milliamps('red');
    expect(red.high - red.low).toBeLessThan(unknown.high - unknown.low);
    expect(milliamps('blue').high).toBeLessThan(unknown.high);
  });
});

describe('a switch that is not sound', () => {
  const HELD = { ...RESTING, held: ['power'] } as const;
  const volts = (lead: string, condition: Part['condition'], state: MachineState = RESTING) => {
    const made = bench('panel-2x5', lead, { 1: '6', 2: '8' });
    const { circuit } = knowing(made, condition ? { condition } : {});
    return spanOf((corner) => circuit.volts(pinNode('header', '6'), state, corner) ?? Number.NaN);
  };

  test.each(['power-switch-1x2', 'reset-switch-1x2'])(
    '%s: a stuck one is closed without a finger',
    (lead) => {
      expect(volts(lead, 'stuck').high).toBeLessThan(0.8);
      expect(volts(lead, undefined).low).toBeGreaterThan(2);
    },
  );

  test('a broken one does not close when it is pressed', () => {
    expect(volts('power-switch-1x2', 'broken', HELD).low).toBeGreaterThan(2);
    expect(volts('power-switch-1x2', undefined, HELD).high).toBeLessThan(0.8);
  });
});

describe('a value that the board sheet states', () => {
  const feed = (ohms: number): Partial<Pin> => ({
    pin: '1',
    values: [{ parameter: 'led-feed-ohms', value: ohms }],
  });
  const toGround = bench('panel-2x5', 'power-switch-1x2', { 1: '1', 2: '5' });
  const PRESSED = { ...RUNNING, held: ['power'] } as const;
  const ampsOf = (pin: Partial<Pin>) => {
    const { circuit } = knowing(toGround, {}, pin);
    return spanOf((corner) =>
      Math.abs(circuit.amps('part.lead.switch', 'part.lead.switch', PRESSED, corner)),
    );
  };

  test('takes the place of the whole range: 750 Ω from 4.75 to 5.25 V, and nothing else', () => {
    const { low, usual, high } = ampsOf(feed(750));
    expect(usual * 1e3).toBeCloseTo(5 / 0.75, 1);
    expect(low * 1e3).toBeCloseTo(4.75 / 0.75, 1);
    expect(high * 1e3).toBeCloseTo(5.25 / 0.75, 1);
  });

  test('is that pin’s only: the usual range of 150 Ω to 1 kΩ holds where nothing is stated', () => {
    const { low, high } = ampsOf({ ...feed(750), pin: '2' });
    expect(low * 1e3).toBeCloseTo(4.75, 1);
    expect(high * 1e3).toBeCloseTo(5.25 / 0.15, 0);
  });

  test('a rail can be stated as well: 5.10 V measured', () => {
    const { low, high } = ampsOf({
      pin: '1',
      values: [
        { parameter: 'main-5v', value: 5.1 },
        { parameter: 'led-feed-ohms', value: 330 },
      ],
    });
    // Two wires and a contact, 0.1 to 2 Ω, are all that is left open.
    expect(high - low).toBeLessThan((high * 2) / 330);
    expect(high * 1e3).toBeCloseTo(5.1 / 0.33, 1);
  });
});
