import { beforeAll, describe, expect, it } from 'vitest';
import { CORNERS } from '../../../boards/circuit/corner';
import { elementsOf } from '../../../boards/circuit/elements';
import { groupsOf } from '../../../boards/circuit/groups';
import { RESTING } from '../../../boards/circuit/machine-state';
import type { Lead } from '../../../boards/document/lead';
import { jointsOf } from '../../../boards/fit/joints';
import { type MeterStep, meterStepsOf } from '../../../boards/handover/meter/meter-steps';
import { measuredNetlist, shownBy } from '../../../boards/handover/meter/probe';
import { type Reference, startReference } from '../../reference/circuit-simulator';
import { demo } from '../findings/demo';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';

const WIRED = demo('wired');
const STEPS = meterStepsOf(WIRED);

/** Less than any load of the demo, more than a jumper cap. */
const SHORT_OHMS = 3;

function redLamp(lead: Lead): Lead {
  return {
    ...lead,
    parts: lead.parts.map((part) => (part.kind === 'power-led' ? { ...part, colour: 'red' } : part)),
  };
}

function stepOf(steps: readonly MeterStep[], lead: string): MeterStep {
  const found = steps.find((step) => step.lead === lead);
  if (!found) throw new Error(`No step for ${lead}`);
  return found;
}

function reading(step: MeterStep, when: string) {
  const found = step.readings.find((each) => each.when === when);
  if (!found) throw new Error(`No reading ${when}`);
  return found;
}

describe('what a meter has to show before power, on the demo', () => {
  it('a switch: no continuity while it is released, a few ohms while it is pressed', () => {
    for (const lead of ['power-switch', 'reset-switch']) {
      const step = stepOf(STEPS, lead);
      expect(reading(step, 'released').expected.low).toBeGreaterThan(500);
      expect(reading(step, 'pressed').expected.high).toBeLessThan(10);
    }
  });

  it('a switch that is stuck, broken or not plugged in is told by one of its two readings', () => {
    const step = stepOf(STEPS, 'power-switch');
    const kinds = (when: string) =>
      reading(step, when).otherwise.map(({ cause }) => ('condition' in cause ? cause.condition : cause.kind));
    expect(kinds('released')).toEqual(['stuck']);
    expect(kinds('pressed').sort()).toEqual(['broken', 'off']);
  });

  it('a red lamp: its forward voltage with red on plus, nothing the other way round, and both if it is turned', () => {
    const red = { ...WIRED.case, leads: WIRED.case.leads.map(redLamp) };
    const step = stepOf(meterStepsOf({ ...WIRED, case: red }), 'power-led');
    const forward = reading(step, 'red-on-plus');
    // Data sheets of red LEDs give 1.6 to 2.6 V at 10 mA; a meter gives less than 1 mA. From memory.
    expect(forward.expected.low).toBeGreaterThan(1.3);
    expect(forward.expected.high).toBeLessThan(2.6);
    expect(forward.otherwise.map(({ cause }) => cause.kind).sort()).toEqual(['off', 'turned']);
    expect(reading(step, 'red-on-minus').expected.low).toBe(Number.POSITIVE_INFINITY);
  });

  it('a lamp of unknown colour may show as open on a meter of 3 V, since a blue one would', () => {
    const step = stepOf(STEPS, 'power-led');
    const forward = reading(step, 'red-on-plus');
    expect(forward.expected.usual).toBeLessThan(3);
    expect(forward.expected.high).toBe(Number.POSITIVE_INFINITY);
    // An open reading then says nothing; only conduction the wrong way round does.
    expect(forward.otherwise).toEqual([]);
    expect(reading(step, 'red-on-minus').otherwise.map(({ cause }) => cause.kind)).toEqual([]);
  });

  it('no supply pin under a plug lies on ground', () => {
    const supplies = STEPS.filter(({ kind }) => kind === 'supply');
    expect(supplies.length).toBeGreaterThan(3);
    for (const { readings } of supplies) expect(readings[0]?.expected.low).toBeGreaterThan(SHORT_OHMS);
  });
});

describe('a wiring with a supply pin joined to ground', () => {
  it('shows as a short where the meter is put across them', () => {
    const cap = partLead('cap', 'jumper-cap', grid(1, 2), { a: '1', b: '2' });
    const header = posts('usb', grid(1, 2), { pins: ['usb-vbus', 'ground'] });
    const [step] = meterStepsOf(bench([header], [cap], [seat('cap', 'usb')]));
    expect(step).toMatchObject({ kind: 'supply' });
    expect(step?.readings[0]?.expected.high).toBeLessThan(SHORT_OHMS);
  });
});

describe('the readings against a circuit simulator (ngspice)', () => {
  let reference: Reference;
  beforeAll(async () => {
    reference = await startReference();
  }, 60_000);

  it('agree within 0.1 mV at the probes, for every reading of the demo at every corner', async () => {
    const elements = groupsOf(elementsOf(WIRED, jointsOf(WIRED)));
    let compared = 0;
    for (const { readings, kind, lead } of STEPS) {
      if (kind === 'supply') continue;
      for (const { mode, red, black, when, expected } of readings) {
        const nodes = [red, black].map(({ connector, pin }) => `pin.${connector}.${pin}`) as [string, string];
        const touched = elements
          .filter((group) =>
            group.elements.some((element) => element.nodes.some((node) => nodes.includes(node))),
          )
          .flatMap((group) => group.elements);
        const held =
          when !== 'pressed' ? [] : lead === 'power-switch' ? (['power'] as const) : (['reset'] as const);
        const state = { ...RESTING, supply: 'unplugged', held } as const;
        const asked = { mode, red: nodes[0], black: nodes[1], state } as const;
        expect(shownBy(touched, asked)).toEqual(expected);
        for (const corner of CORNERS.slice(0, 3)) {
          const point = await reference.operatingPoint(measuredNetlist(touched, asked, corner));
          const across = (point.get(nodes[0]) ?? 0) - (point.get(nodes[1]) ?? 0);
          const source = mode === 'diode' ? { volts: 3, ohms: 2_000 } : { volts: 0.5, ohms: 500 };
          const amps = (source.volts - across) / source.ohms;
          const theirs = mode === 'diode' ? across : across / amps;
          // What is shown at this corner lies within the span that our steps give.
          const span = expected;
          if (mode === 'diode' && across < 0.95 * 3) {
            expect(theirs).toBeGreaterThan(span.low - 1e-4);
            expect(theirs).toBeLessThan(span.high + 1e-4);
            compared += 1;
          } else if (mode === 'ohms' && theirs < 1e5) {
            expect(theirs / span.low).toBeGreaterThan(0.999);
            expect(theirs / span.high).toBeLessThan(1.001);
            compared += 1;
          }
        }
      }
    }
    expect(compared).toBeGreaterThan(12);
  });
});
