import { describe, expect, test } from 'vitest';
import { numbersOf } from '../../../../boards/findings/finding-numbers';
import { wordsOf } from '../../../../boards/findings/words';
import { makeLead } from '../../../../boards/library/make-lead';
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
      data: { connector: 'hd', presence: 'low' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'ac97' } } }],
    });
  });

  test('the finding says the volts: against 10 kΩ a ground wire leaves millivolts, on any board', () => {
    // Pull-up: the guide, 2.3.5.1.1. Wires of 0.4 Ω at most (ASTM B258) and 3.47 V (microATX v1.2, Table 7).
    const found = board.seat('jacks', 'hd', '1').finding('ac97-on-hd-audio');
    const numbers = numbersOf(found);
    expect(Object.keys(numbers)).toEqual(['voltsUsual', 'voltsLow', 'voltsHigh']);
    expect(numbers.voltsHigh).toBeGreaterThan(0);
    expect(numbers.voltsHigh).toBeLessThan(1e-3);
  });

  test('without a wire on pin 4 the board sees no panel, and nothing is said of one', () => {
    const lead = makeLead('ac97-audio-block-2x5', { id: 'jacks', name: 'JACKS' });
    const wires = lead.wires.filter(({ from, to }) => ![from, to].includes(`${lead.plugs[0]?.id}.4`));
    expect(wires).toHaveLength(lead.wires.length - 1);
    const bare = bench()
      .header('hd-audio-2x5', 'hd')
      .lead('ac97-audio-block-2x5', 'jacks', { wires })
      .seat('jacks', 'hd', '1');
    const found = bare.finding('ac97-on-hd-audio');
    expect(found.data.presence).toBeUndefined();
    expect(wordsOf(found, bare.build).reason).not.toContain('presence');
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
