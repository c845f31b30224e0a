import { describe, expect, test } from 'vitest';
import { numbersOf } from '../../../../boards/findings/finding-numbers';
import { wordsOf } from '../../../../boards/findings/words';
import { bench } from '../harness';

describe('an HD audio lead on an AC’97 header', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), Table 6 and Figure 4: same shape, pin 8 missing on both.
  function on(type: string) {
    return bench()
      .header('hd-audio-2x5', 'hd')
      .header(type, 'front')
      .lead('hd-audio-block-2x5', 'jacks')
      .seat('jacks', 'front', '1');
  }

  test('+5 V on pin 7 reaches the sense wire: a danger, told once', () => {
    const build = on('ac97-audio-2x5');
    expect(build.faults()).toEqual(['hd-audio-on-ac97']);
    expect(build.finding('hd-audio-on-ac97')).toMatchObject({
      severity: 'danger',
      leads: ['jacks'],
      data: { connector: 'front', variant: 'supply-on-sense' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'hd' } } }],
    });
  });

  test('+5 V on pin 4, the early order, meets the presence resistor', () => {
    // An early board manual, quoted by owners: AUD_VCC on pin 4.
    expect(on('ac97-audio-2x5-early').finding('hd-audio-on-ac97')).toMatchObject({
      severity: 'danger',
      data: { variant: 'supply-on-presence' },
    });
  });

  test('no supply at all: detection is lost, nothing is harmed', () => {
    // A board product guide: pin 7 not connected, pins 6 and 10 ground.
    expect(on('ac97-audio-2x5-dual-mode').finding('hd-audio-on-ac97')).toMatchObject({
      severity: 'fault',
      data: { variant: 'passive', presence: 'low' },
    });
  });

  test('each is told with the volts over the ranges of the board', () => {
    // +5 V ± 5 % (microATX v1.2, Table 7); 1 kΩ against 10 kΩ, each ± 5 %, on 3.14 to 3.47 V (the guide, 2.3.5).
    for (const type of ['ac97-audio-2x5', 'ac97-audio-2x5-early']) {
      const { voltsLow, voltsHigh } = numbersOf(on(type).finding('hd-audio-on-ac97'));
      expect(voltsLow).toBeGreaterThan(4.7);
      expect(voltsHigh).toBeLessThanOrEqual(5.25);
    }
    const dual = numbersOf(on('ac97-audio-2x5-dual-mode').finding('hd-audio-on-ac97'));
    expect(dual.voltsUsual).toBeCloseTo(3.3 / 11, 3);
    expect(dual.voltsHigh).toBeLessThan(0.36);
  });

  test('a dual-mode header reads an HD panel at its presence pin, and the finding says so', () => {
    const dual = on('ac97-audio-2x5-dual-mode');
    const { reason } = wordsOf(dual.finding('hd-audio-on-ac97'), dual.build);
    expect(reason).toContain('0.26 to 0.35\u00a0V');
  });

  test('on an HD audio header it is right', () => {
    expect(on('hd-audio-2x5').codes()).toEqual([]);
  });
});
