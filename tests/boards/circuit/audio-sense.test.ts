import { describe, expect, test } from 'vitest';
import { CORNERS, type Corner, USUAL } from '../../../boards/circuit/corner';
import type { Device, Netlist } from '../../../boards/circuit/device';
import { netlistOf, pinNode } from '../../../boards/circuit/elements';
import { RUNNING } from '../../../boards/circuit/machine-state';
import { inputVolts } from '../../../boards/circuit/readings/inputs';
import { levelOf } from '../../../boards/circuit/readings/level';
import { solve } from '../../../boards/circuit/solve';
import { parameterAt } from '../../../boards/signals/parameters';
import { bench } from './bench';

const EVERY_HOLE = { 1: '1', 2: '2', 3: '3', 4: '4', 5: '5', 6: '6', 7: '7', 9: '9', 10: '10' };

/** The device that a plug in a jack closes, and the resistor it brings: a codec data sheet, read in secondary. */
const JACKS = [
  { closes: 'part.lead.jacks.phones-jack', ohms: 39_200 },
  { closes: 'part.lead.jacks.mic-jack', ohms: 20_000 },
  { closes: 'pin.header.7#1', ohms: 10_000 },
  { closes: 'pin.header.7#2', ohms: 5_100 },
] as const;
const PULL_OHMS = 2_670;

type Jacks = readonly (typeof JACKS)[number][];

/** Every way to put plugs into at least one of the four jacks. */
const FIFTEEN: readonly Jacks[] = Array.from({ length: 15 }, (_, i) =>
  JACKS.filter((__, bit) => ((i + 1) >> bit) & 1),
);

const made = bench('hd-audio-2x5', 'hd-audio-block-2x5', EVERY_HOLE);

function withPlugsIn(jacks: Jacks, corner: Corner): Netlist {
  const closed = new Set<string>(jacks.map(({ closes }) => closes));
  return netlistOf(made.circuit.elements, RUNNING, corner).map((device): Device => {
    if (!closed.has(device.id)) return device;
    closed.delete(device.id);
    if (device.kind === 'switch') return { ...device, closed: true };
    if (device.kind === 'open-drain') return { ...device, on: true };
    throw new Error(`${device.id} is no jack`);
  });
}

/** The level of the sense line, solved. */
function senseVolts(jacks: Jacks, corner: Corner): number {
  return solve(withPlugsIn(jacks, corner)).volts.get(pinNode('header', '7')) ?? Number.NaN;
}

const named = (jacks: Jacks) => jacks.map(({ ohms }) => `${ohms / 1000} kΩ`).join(' + ');

describe('four jacks on one sense line of an HD audio header', () => {
  test.each(FIFTEEN.map((jacks) => [named(jacks), jacks] as const))(
    '%s: as the divider worked by hand',
    (_, jacks) => {
      const siemens = jacks.reduce((sum, { ohms }) => sum + 1 / ohms, 0);
      const byHand = 3.3 / (1 + PULL_OHMS * siemens);
      expect(Math.abs(senseVolts(jacks, USUAL) - byHand)).toBeLessThan(1e-4);
    },
  );

  test('no two of the fifteen give the same level, wherever the 1 % parts lie', () => {
    const shares = FIFTEEN.map((jacks) =>
      CORNERS.map((corner) => senseVolts(jacks, corner) / parameterAt('audio-volts', corner.feed)),
    );
    const spans = shares
      .map((all) => ({ low: Math.min(...all), high: Math.max(...all) }))
      .sort((a, b) => a.low - b.low);
    for (const [i, span] of spans.slice(1).entries()) expect(span.low).toBeGreaterThan(spans[i]?.high ?? 1);
  });

  test('the four resistors are 1 % parts', () => {
    for (const [id, ohms] of [
      ['sense2-ohms', 39_200],
      ['sense1-ohms', 20_000],
      ['sense3-ohms', 10_000],
      ['sense4-ohms', 5_100],
    ] as const) {
      expect(parameterAt(id, 'usual')).toBe(ohms);
      expect(parameterAt(id, 'strong')).toBeCloseTo(ohms * 0.99, 6);
      expect(parameterAt(id, 'weak')).toBeCloseTo(ohms * 1.01, 6);
    }
  });

  test('with a plug in every jack the machine reads all four, with none the pull-up alone', () => {
    expect(made.volts('7', { ...RUNNING, attached: true })).toBeCloseTo(senseVolts(JACKS, USUAL), 9);
    expect(made.volts('7', RUNNING)).toBeCloseTo(parameterAt('audio-volts', 'usual'), 6);
  });
});

/** 10 kΩ on the board, 1 kΩ in the panel: Front Panel I/O Connectivity Design Guide v1.3, 2.3.5; 3.3 V is assumed. */
describe('the presence pin of an HD audio header', () => {
  const presenceVolts = ({ circuit }: typeof made) => inputVolts(circuit, [pinNode('header', '4')], RUNNING);

  test('1 kΩ of a panel: low on any board, near an eleventh of the rail', () => {
    const volts = presenceVolts(made);
    expect(levelOf(volts)).toBe('low');
    expect(volts?.usual).toBeCloseTo(3.3 / 11, 3);
    expect(volts?.low).toBeGreaterThan(3.14 * (950 / (950 + 10_500)) - 1e-3);
    expect(volts?.high).toBeLessThan(3.47 * (1050 / (1050 + 9500)) + 1e-3);
  });

  test('the sense wire of the panel there instead, its jacks empty: the pull-up holds it high', () => {
    const volts = presenceVolts(bench('hd-audio-2x5', 'hd-audio-block-2x5', { 7: '4' }));
    expect(levelOf(volts)).toBe('high');
    expect(volts?.usual).toBeCloseTo(3.3, 2);
  });

  test('no wire on it: nothing to read', () => {
    expect(presenceVolts(bench('hd-audio-2x5', 'hd-audio-block-2x5', { 7: '7' }))).toBeUndefined();
  });
});
