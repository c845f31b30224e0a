import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('an AC’97 lead on an HD audio header', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), Table 6 and Figure 4: same shape, pin 8 missing on both.
  const board = bench()
    .header('ac97-audio-2x5', 'ac97')
    .header('hd-audio-2x5', 'hd')
    .lead('ac97-audio-block-2x5', 'jacks');

  test('detection is lost, and its ground on pin 4 reports an HD panel', () => {
    const build = board.seat('jacks', 'hd', '1');
    expect(build.faults()).toEqual(['ac97-on-hd-audio']);
    expect(build.finding('ac97-on-hd-audio')).toMatchObject({
      severity: 'fault',
      leads: ['jacks'],
      data: { connector: 'hd', presenceGrounded: true },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'ac97' } } }],
    });
  });

  test('on an AC’97 header it is right', () => {
    expect(board.seat('jacks', 'ac97', '1').faults()).toEqual([]);
  });

  test('its ground wire on the early +5 V of pin 4 is a danger', () => {
    // An early board manual, quoted by owners: AUD_VCC on pin 4.
    const early = bench().header('ac97-audio-2x5-early', 'early').lead('ac97-audio-block-2x5', 'jacks');
    expect(early.seat('jacks', 'early', '1').faults()).toEqual(['supply-on-wire']);
  });
});
