import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a seat that a file holds though the plug cannot sit there', () => {
  // Common practice, no source: two plugs cannot be on the same pins.
  const panel = bench()
    .header('panel-2x5', 'panel')
    .lead('power-switch-1x2', 'power')
    .seat('power', 'panel', '6');

  test('two plugs on the same pins: both are told, with the plug in the way', () => {
    const build = panel.lead('reset-switch-1x2', 'reset').seat('reset', 'panel', '6');
    expect(build.finding('seat-impossible')).toMatchObject({
      severity: 'fault',
      leads: ['power'],
      data: {
        connector: 'panel',
        refusals: [{ code: 'occupied', by: { lead: 'reset', plug: 'plug' }, pins: ['6', '8'] }],
      },
    });
  });

  test('a blocked hole on a pin', () => {
    const build = bench()
      .header('usb2-2x5', 'usb')
      .lead('usb2-block-2x5', 'front')
      .seat('front', 'usb', '10', { turn: 180 });
    expect(build.faults()).toContain('seat-impossible');
  });

  test('side by side they fit', () => {
    const build = panel.lead('reset-switch-1x2', 'reset').seat('reset', 'panel', '5');
    expect(build.codes()).toEqual([]);
  });
});
