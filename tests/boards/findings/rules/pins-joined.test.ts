import { describe, expect, test } from 'vitest';
import { circuitOf } from '../../../../boards/circuit/circuit';
import { USUAL } from '../../../../boards/circuit/corner';
import { pinNode } from '../../../../boards/circuit/elements';
import { tripOf } from '../../../../boards/circuit/readings/fuses';
import { heaviestLoad } from '../../../../boards/circuit/readings/wire-loads';
import type { Lead } from '../../../../boards/document/lead';
import { singleRow } from '../../../../boards/library/grids';
import { plug } from '../../../../boards/library/plug-and-wires';
import { type Bench, bench } from '../harness';

describe('a cable with both ends on the board', () => {
  // Common practice, no source: a wire between a supply and ground is a short.
  const cable: Partial<Lead> = {
    parts: [],
    plugs: [plug('one', 'ONE', singleRow(1)), plug('other', 'OTHER', singleRow(1))],
    wires: [{ from: 'one.1', to: 'other.1', colour: 'black' }],
  };
  const board = bench()
    .header('usb2-2x5', 'usb')
    .header('panel-2x5', 'panel')
    .lead('power-led-singles', 'link', cable);

  test('+5 V and ground joined by a wire: a danger', () => {
    const build = board
      .seat('link', 'usb', '1', { plug: 'one' })
      .seat('link', 'panel', '8', { plug: 'other' });
    expect(build.finding('pins-joined')).toMatchObject({
      severity: 'danger',
      leads: ['link'],
      pins: [
        { connector: 'usb', pin: '1' },
        { connector: 'panel', pin: '8' },
      ],
      data: { first: { signal: 'usb-vbus' }, second: { signal: 'ground' } },
    });
  });

  test('an input held at ground: a fault', () => {
    const build = board
      .seat('link', 'panel', '6', { plug: 'one' })
      .seat('link', 'panel', '8', { plug: 'other' });
    expect(build.finding('pins-joined').severity).toBe('fault');
  });

  test('two grounds, or one end alone, are nothing', () => {
    expect(board.seat('link', 'panel', '5', { plug: 'one' }).codes()).not.toContain('pins-joined');
    const grounds = board
      .seat('link', 'panel', '5', { plug: 'one' })
      .seat('link', 'panel', '8', { plug: 'other' });
    expect(grounds.codes()).not.toContain('pins-joined');
  });
});

describe('wires that meet in a hole of a plug that lies loose', () => {
  // The circuit's own current says what they join: more than 10 A through wires that are made for 3 A.
  const amps = (made: Bench, lead: string, wire: number) =>
    heaviestLoad(circuitOf(made.build), lead, wire)?.amps ?? 0;

  // 4-Wire PWM Controlled Fans Specification rev 1.3, Table 1: ground on 1, +12 V on 2. Branch 2 is one pin off,
  // so that its ground wire takes +12 V to the ground wire of branch 1.
  const fans = bench()
    .header('fan-1x4', 'one')
    .header('fan-1x4', 'two')
    .lead('fan-splitter', 'split')
    .seat('split', 'one', '1', { plug: 'first' });

  test('a splitter with one branch on its pins and the other one pin off: +12 V to ground, a danger', () => {
    const build = fans.seat('split', 'two', '2', { plug: 'second' });
    expect(amps(build, 'split', 0)).toBeGreaterThan(10);
    expect(build.all('pins-joined')).toMatchObject([
      {
        severity: 'danger',
        leads: ['split'],
        pins: [
          { connector: 'one', pin: '1' },
          { connector: 'two', pin: '2' },
        ],
      },
      // The yellow wires take the +12 V of one header to the tachometer pin of the other.
      {
        severity: 'danger',
        pins: [
          { connector: 'one', pin: '2' },
          { connector: 'two', pin: '3' },
        ],
      },
    ]);
  });

  test('with both branches on their pins nothing is shorted', () => {
    const build = fans.seat('split', 'two', '1', { plug: 'second' });
    expect(amps(build, 'split', 0)).toBeLessThan(1);
    expect(build.codes()).not.toContain('pins-joined');
  });

  // Common practice, no source: a way from a supply to ground is a short, of however many wires it is made.
  test('a cable of three plugs, +5 V at one and ground at another: a danger, told once', () => {
    const build = bench()
      .header('usb2-2x5', 'usb')
      .header('panel-2x5', 'panel')
      .lead('power-led-singles', 'link', {
        parts: [],
        plugs: ['a', 'b', 'c'].map((id) => plug(id, id.toUpperCase(), singleRow(1))),
        wires: [
          { from: 'a.1', to: 'b.1', colour: 'black' },
          { from: 'a.1', to: 'c.1', colour: 'black' },
        ],
      })
      .seat('link', 'usb', '1', { plug: 'b' })
      .seat('link', 'panel', '8', { plug: 'c' });
    // The port's own fuse opens.
    expect(tripOf(circuitOf(build.build), pinNode('usb', '1'), USUAL)).toBeGreaterThan(1);
    expect(build.all('pins-joined').map(({ severity, pins }) => ({ severity, pins }))).toEqual([
      {
        severity: 'danger',
        pins: [
          { connector: 'usb', pin: '1' },
          { connector: 'panel', pin: '8' },
        ],
      },
    ]);
    const grounded = build.seat('link', 'panel', '5', { plug: 'a' });
    // Two grounds with one supply: each of the three pins is named, and no pair twice.
    expect(grounded.all('pins-joined').map(({ pins }) => pins.map(({ pin }) => pin))).toEqual([
      ['1', '8'],
      ['1', '5'],
    ]);
  });
});
