import { describe, expect, test } from 'vitest';
import type { Lead } from '../../../../boards/document/lead';
import { bench } from '../harness';

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
});
