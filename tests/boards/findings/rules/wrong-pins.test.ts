import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../../boards/findings/words';
import { bench, switchOnSingles } from '../harness';

describe('the right header and the wrong pins of it', () => {
  // USB 2.0 2x5 header as listed in board product guides: 3 D−, 5 D+.
  function singles(minus: string, plus: string) {
    return bench()
      .header('usb2-2x5', 'usb')
      .lead('usb2-singles', 'reader')
      .seat('reader', 'usb', '1', { plug: 'first-vbus' })
      .seat('reader', 'usb', minus, { plug: 'first-d-minus' })
      .seat('reader', 'usb', plus, { plug: 'first-d-plus' })
      .seat('reader', 'usb', '7', { plug: 'first-ground' });
  }

  test('D− and D+ exchanged: only these two wires are named', () => {
    expect(singles('5', '3').finding('wrong-pins')).toMatchObject({
      severity: 'fault',
      leads: ['reader'],
      data: {
        part: 'first',
        meetings: [
          { terminal: 'd-minus', signal: 'usb-d-plus' },
          { terminal: 'd-plus', signal: 'usb-d-minus' },
        ],
      },
    });
  });

  // USB 2.0, 6.4: it is the supply that does harm the wrong way round; data wires that are exchanged carry nothing.
  test('D− and D+ exchanged with no supply wire seated: not called the wrong way round', () => {
    const build = bench()
      .header('usb2-2x5', 'usb')
      .lead('usb2-singles', 'reader')
      .seat('reader', 'usb', '5', { plug: 'first-d-minus' })
      .seat('reader', 'usb', '3', { plug: 'first-d-plus' });
    expect(build.faults()).toEqual(['wrong-pins']);
  });

  test('each on its own pin is right', () => {
    expect(singles('3', '5').codes()).toEqual([]);
  });

  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2.4: the switch joins its input to ground.
  test('a switch from one ground to another: each wire could be there, so both are named', () => {
    const build = bench()
      .header('panel-2x5', 'panel', { '3': { signal: 'ground' } })
      .lead('power-led-singles', 'power', switchOnSingles('power-switch'))
      .seat('power', 'panel', '8', { plug: 'plus' })
      .seat('power', 'panel', '3', { plug: 'minus' });
    const finding = build.finding('wrong-pins');
    expect(finding.data.meetings.map(({ pin }) => pin.pin)).toEqual(['8', '3']);
    expect(wordsOf(finding, build.build).reason.replaceAll('\u00a0', ' ')).toContain(
      'POWER has the first leg on pin 8 (ground) and the second leg on pin 3 (ground) of PANEL.',
    );
  });
});
