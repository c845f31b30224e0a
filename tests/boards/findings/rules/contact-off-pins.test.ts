import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a contact that meets no pin', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), Figure 10: position 10 has no pin.
  const panel = bench().header('panel-2x5', 'panel').lead('power-switch-1x2', 'power');

  test('over the missing pin, away from its place: a fault that names hole and position', () => {
    const build = panel.seat('power', 'panel', '9', { turn: 270 });
    expect(build.finding('contact-off-pins')).toMatchObject({
      severity: 'fault',
      leads: ['power'],
      pins: [{ connector: 'panel', pin: '9' }],
      data: {
        plug: { lead: 'power', plug: 'plug' },
        connector: 'panel',
        contacts: [{ hole: '2', pin: '10' }],
      },
    });
  });

  test('past the edge: a hole and no position', () => {
    const build = panel.seat('power', 'panel', '2', { turn: 180 });
    expect(build.finding('contact-off-pins').data.contacts).toEqual([{ hole: '2' }]);
  });

  test('a shield wire may miss its pin', () => {
    // USB 2.0 header as listed in board product guides: position 9 has no pin.
    const usb = bench().header('usb2-2x5', 'usb').lead('usb2-row-1x5', 'reader').seat('reader', 'usb', '1');
    expect(usb.codes()).toEqual([]);
  });
});
