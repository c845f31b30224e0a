import { beforeAll, describe, expect, test } from 'vitest';
import { circuitOf } from '../../../boards/circuit/circuit';
import { USUAL } from '../../../boards/circuit/corner';
import { elementsOf, type Loads, netlistOf, pinNode } from '../../../boards/circuit/elements';
import { type MachineState, RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { arrivalAt } from '../../../boards/circuit/readings/arrivals';
import type { Build } from '../../../boards/document/build';
import { jointsOf } from '../../../boards/fit/joints';
import { type Reference, startReference } from '../../reference/circuit-simulator';
import { bench } from '../findings/harness';
import { supplies } from '../findings/supplies';

/** Supplies, cables and hubs beside a general circuit simulator (ngspice): what arrives, and what is left of it under load. */
let reference: Reference;

beforeAll(async () => {
  reference = await startReference();
}, 60_000);

async function simulated(build: Build, loads: Loads, state: MachineState) {
  return reference.operatingPoint(netlistOf(elementsOf(build, jointsOf(build), loads), state, USUAL));
}

// Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7.
const SATA_PINS = [
  ['1', 3.3],
  ['4', 0],
  ['7', 5],
  ['13', 12],
] as const;

describe('a cable on the supply that it came with', () => {
  const { build } = supplies({ cables: 'birch', outlets: 'birch' }).bench;

  test.each(SATA_PINS)(
    'brings contact %s of a drive %d V, with the drive and without',
    async (pin, volts) => {
      const ref = { connector: 'disk-power', pin };
      const open = arrivalAt(build, ref).volts(RUNNING)?.usual ?? Number.NaN;
      expect(open).toBeCloseTo(volts, 2);
      const away = await simulated(build, 'away', RUNNING);
      expect(open).toBeCloseTo(away.get(pinNode('disk-power', pin)) ?? Number.NaN, 6);
      const there = await simulated(build, 'there', RUNNING);
      const loaded = circuitOf(build).volts(pinNode('disk-power', pin), RUNNING, USUAL) ?? Number.NaN;
      expect(loaded).toBeCloseTo(there.get(pinNode('disk-power', pin)) ?? Number.NaN, 6);
      expect(Math.abs(loaded - volts)).toBeLessThan(0.2);
    },
  );

  test('on standby brings +5 V to pin 9 of the board alone', async () => {
    const away = await simulated(build, 'away', RESTING);
    // microATX specification v1.2, Figure 8: +5 V standby is pin 9; the others are off.
    for (const [pin, volts] of [
      ['9', 5],
      ['4', 0],
      ['10', 0],
    ] as const) {
      const ours = arrivalAt(build, { connector: 'main', pin }).volts(RESTING)?.usual ?? Number.NaN;
      expect(ours).toBeCloseTo(volts, 2);
      expect(ours).toBeCloseTo(away.get(pinNode('main', pin)) ?? Number.NaN, 6);
    }
  });
});

describe('the same cable on the like outlet of another supply', () => {
  const { build } = supplies({ cables: 'ash', outlets: 'birch' }).bench;

  test.each([
    ['disk-power', '7', 12],
    ['disk-power', '13', 5],
    ['cpu', '1', 12],
    ['cpu', '5', 0],
    ['card-power', '4', 12],
  ] as const)('brings %s pin %s %d V', async (connector, pin, volts) => {
    const away = await simulated(build, 'away', RUNNING);
    const ours = arrivalAt(build, { connector, pin }).volts(RUNNING)?.usual ?? Number.NaN;
    expect(ours).toBeCloseTo(volts, 2);
    expect(ours).toBeCloseTo(away.get(pinNode(connector, pin)) ?? Number.NaN, 6);
  });
});

test('a fan on a hub gets what its header gives, less what wires and hub drop', async () => {
  const { build } = bench()
    .header('fan-1x4', 'sysfan')
    .unit('fan-hub-header', 'hub')
    .lead('fan-1x4', 'rear')
    .seat('hub-tail', 'sysfan', '1', { plug: 'header' })
    .seat('rear', 'hub-fan-2', '1');
  const there = await simulated(build, 'there', RUNNING);
  const ours = circuitOf(build).volts(pinNode('hub-fan-2', '2'), RUNNING, USUAL) ?? Number.NaN;
  expect(ours).toBeCloseTo(there.get(pinNode('hub-fan-2', '2')) ?? Number.NaN, 6);
  expect(ours).toBeGreaterThan(11.8);
  expect(ours).toBeLessThan(12);
});
