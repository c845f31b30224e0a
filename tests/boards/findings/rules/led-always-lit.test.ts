import { describe, expect, test } from 'vitest';
import type { Lead } from '../../../../boards/document/lead';
import { singleRow } from '../../../../boards/library/grids';
import { plug } from '../../../../boards/library/plug-and-wires';
import { type Bench, bench } from '../harness';

describe('an LED from its feed to plain ground', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2; worked out from its pin order.
  const apart: Partial<Lead> = {
    wires: [
      { from: 'led.anode', to: 'plug.1', colour: 'red' },
      { from: 'led.cathode', to: 'plug.4', colour: 'white' },
    ],
  };
  const board = bench().header('panel-2x5', 'panel');

  test('a drive LED from pin 2 to ground on pin 8 is lit and shows nothing', () => {
    const build = board.lead('drive-led-1x4', 'drive', apart).seat('drive', 'panel', '2');
    expect(build.faults()).toEqual(['led-always-lit']);
    expect(build.finding('led-always-lit')).toMatchObject({
      severity: 'fault',
      leads: ['drive'],
      pins: [
        { connector: 'panel', pin: '2' },
        { connector: 'panel', pin: '8' },
      ],
      data: { part: 'led' },
    });
  });

  test('where ground is the power LED’s own return it is right', () => {
    // Power LED and key lock header, from a tutorial on older boards: 1 LED +, 3 LED ground.
    const old = bench()
      .header('power-led-key-lock-1x5', 'pled')
      .lead('power-led-1x3', 'power')
      .seat('power', 'pled', '1');
    expect(old.codes()).toEqual([]);
  });

  test('ground of another header is no better, with two single plugs', () => {
    const build = board
      .header('usb2-2x5', 'usb')
      .lead('power-led-singles', 'power')
      .seat('power', 'panel', '2', { plug: 'plus' })
      .seat('power', 'usb', '7', { plug: 'minus' });
    expect(build.codes('power')).toEqual(['led-always-lit']);
  });

  test('a drive LED with two plugs, in whichever order they were seated: one is enough to keep it lit', () => {
    const twin = board.header('panel-2x5', 'other').lead('drive-led-1x4', 'drive', {
      plugs: [plug('two', '2', singleRow(2)), plug('four', '4', singleRow(4))],
      wires: ['two', 'four'].flatMap((id): Lead['wires'] => [
        { from: 'led.anode', to: `${id}.1`, colour: 'red' },
        { from: 'led.cathode', to: `${id}.${id === 'two' ? 2 : 4}`, colour: 'white' },
      ]),
    });
    const right = (made: Bench) => made.seat('drive', 'panel', '1', { plug: 'two' });
    const wrong = (made: Bench) => made.seat('drive', 'other', '2', { plug: 'four' });
    expect(wrong(right(twin)).codes('drive')).toContain('led-always-lit');
    expect(right(wrong(twin)).codes('drive')).toContain('led-always-lit');
  });

  test('a two-colour LED conducts both ways', () => {
    // Drawn as an anti-parallel pair in a public note on another maker's panel (read in secondary).
    const two = board.lead('two-colour-power-led-1x2', 'power', {
      plugs: [plug('plug', 'POWER LED', singleRow(4))],
      wires: [
        { from: 'led.first', to: 'plug.4', colour: 'green' },
        { from: 'led.second', to: 'plug.1', colour: 'yellow' },
      ],
    });
    expect(two.seat('power', 'panel', '2').codes('power')).toContain('led-always-lit');
  });

  test('a two-colour LED where ground is the return shows one colour, either way round', () => {
    const old = bench()
      .header('power-led-key-lock-1x5', 'pled')
      .lead('two-colour-power-led-1x2', 'power', {
        plugs: [plug('plug', 'POWER LED', singleRow(3))],
        wires: [
          { from: 'led.first', to: 'plug.1', colour: 'green' },
          { from: 'led.second', to: 'plug.3', colour: 'yellow' },
        ],
      });
    expect(old.seat('power', 'pled', '1').codes()).toEqual([]);
    expect(old.seat('power', 'pled', '3', { turn: 180 }).codes()).toEqual(['reversed']);
  });
});
