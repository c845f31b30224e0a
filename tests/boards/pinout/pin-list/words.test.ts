import { describe, expect, it } from 'vitest';
import { keyOf, piecesOf } from '../../../../boards/pinout/pin-list/clean';
import { expand } from '../../../../boards/pinout/pin-list/expand';
import { matchWord } from '../../../../boards/pinout/pin-list/match-word';
import { MEANINGS } from '../../../../boards/pinout/pin-list/meanings';
import type { Understood } from '../../../../boards/pinout/pin-list/understood';
import { WORD_COUNT } from '../../../../boards/pinout/pin-list/word-index';
import { WORD_ROWS } from '../../../../boards/pinout/pin-list/words/index';
import { SIGNALS } from '../../../../boards/signals/signals';

// Spellings: common practice, no source, where nothing else is named.

/** "power-led +", "usb-data - port 1": the first thing a word is taken for. */
function read(word: string): string {
  return everyMeaning(word)[0] ?? 'not understood';
}

function everyMeaning(word: string): readonly string[] {
  return matchWord(word).map(meaningWords);
}

function meaningWords(first: Understood): string {
  const sign = first.sign === undefined ? '' : first.sign === 'plus' ? ' +' : ' -';
  return `${first.means}${sign}${first.port === undefined ? '' : ` port ${first.port}`}`;
}

describe('the word list', () => {
  it('has more than six hundred words, spelling aside', () => {
    expect(WORD_COUNT).toBeGreaterThan(600);
    const written = WORD_ROWS.flatMap(({ words }) => words);
    expect(written.length).toBeGreaterThan(600);
  });

  it('has no word with two meanings', () => {
    const first = new Map<string, string>();
    const clashes = WORD_ROWS.flatMap(({ means, sign, words }) =>
      words.flatMap(expand).flatMap((word) => {
        const key = keyOf(piecesOf(word));
        const meaning = `${means} ${sign ?? ''}`;
        const other = first.get(key) ?? meaning;
        first.set(key, other);
        return other === meaning ? [] : [`${word}: ${other} or ${meaning}`];
      }),
    );
    expect(clashes).toEqual([]);
  });

  it('is understood word by word as it stands', () => {
    const missed = WORD_ROWS.flatMap(({ means, words }) =>
      words.flatMap(expand).filter((word) => matchWord(word)[0]?.means !== means),
    );
    expect(missed).toEqual([]);
  });

  it('has a word for every signal that a header can have', () => {
    const said = new Set<string>(Object.values(MEANINGS).flatMap((meaning) => Object.values(meaning)));
    // Those that only neighbours tell (header-rules.ts) and "unknown" itself have no word of their own.
    const settled = ['usb3-d-plus', 'usb3-d-minus', 'usbc-d-plus', 'usbc-d-minus', 'ground', 'shield'];
    const without = SIGNALS.map(({ id }) => id).filter((id) => !said.has(id) && !settled.includes(id));
    expect(without).toEqual([]);
  });
});

describe('a word', () => {
  it.each([
    ['PLED+', 'power-led +'],
    ['PWR_LED-', 'power-led -'],
    ['HDD LED -', 'drive-led -'],
    ['H.D.D. LED (+)', 'drive-led +'],
    ['HD_LED_P', 'drive-led +'],
    ['HDLED_N', 'drive-led -'],
    ['LED_PWR_K', 'power-led -'],
    ['PWRBTN#', 'power-switch'],
    ['PW_SW', 'power-switch'],
    ['nRESET', 'reset-switch'],
    ['RST_SW−', 'reset-switch -'],
    ['5VSB', '5v-standby'],
    ['+5 V standby', '5v-standby +'],
    ['+3.3V', '3v3 +'],
    ['3V3', '3v3'],
    ['– 12 V', '12v -'],
    ['GND', 'ground'],
    ['0V', 'ground'],
    ['N.C.', 'no-connection'],
    ['N/A', 'key'],
    ['(keyed)', 'key'],
    ['no pin', 'key'],
    ['cut', 'key'],
    ['Rsvd', 'reserved'],
    ['SPKR', 'speaker'],
    ['D+ A', 'usb-data + port A'],
    ['USB_P0-', 'usb-data - port 0'],
    ['USB1_D_P', 'usb-data + port 1'],
    ['D-1', 'usb-data - port 1'],
    ['USB 2.0 D-', 'usb-data -'],
    ['VBUS 2', 'usb-supply port 2'],
    ['CPU_FAN_PWM', 'fan-pwm'],
  ])('%s is read as %s', (word, meaning) => {
    expect(read(word)).toBe(meaning);
  });

  it.each([
    // Front Panel I/O Connectivity Design Guide v1.3, 2.2.5 (from memory)
    ['HD_PWR', 'drive-led +'],
    ['HAD#', 'drive-led -'],
    ['FP PWR/SLP', 'power-led'],
    // the same, Figure 4
    ['PORT1 L', 'mic-left'],
    ['SENSE1_RETURN', 'mic-sense'],
    ['PRESENCE#', 'presence'],
    // the same, Table 6
    ['FP_RETURN_R', 'return-right'],
    ['AUD_5V', 'audio-supply'],
    ['FP_OUT_L', 'out-left'],
    // USB 3.0 Internal Connector and Cable Specification, as a board manual lists it
    ['IntA_P1_SSRX-', 'usb3-receive - port 1'],
    ['SSTX2+', 'usb3-send + port 2'],
    // microATX specification v1.2, Figure 8
    ['PS_ON#', 'ps-on'],
    ['PWR_OK', 'power-ok'],
    ['COM', 'ground'],
    // IEEE 1394a header of a board product guide, which prints TPA2 for the pair TPB
    ['TPA1+', 'ieee1394-a +'],
    ['TPA2-', 'ieee1394-b -'],
    // TIA-232 circuits
    ['DCD', 'dcd'],
    ['RTS#', 'rts'],
    ['SOUT', 'txd'],
  ])('%s of a paper is read as %s', (word, meaning) => {
    expect(read(word)).toBe(meaning);
  });

  it('may say in brackets or behind a stroke what it is besides', () => {
    expect(read('RESET- (GND)')).toBe('reset-switch -');
    expect(read('GND (reset)')).toBe('reset-switch -');
    expect(read('GND RST#')).toBe('reset-switch -');
    expect(read('GND (power)')).toBe('power-switch -');
    expect(read('Reset button, ground side')).toBe('reset-switch -');
    expect(matchWord('NC / reserved / over-current').map(({ means }) => means)).toEqual([
      'no-connection',
      'reserved',
      'over-current',
    ]);
  });

  // Each of them was once read as the first or the last of its words alone.
  it.each([
    ['KEY 5VSB', ['key', '5v-standby']],
    ['5VSB KEY', ['5v-standby', 'key']],
    ['KEY (5VSB)', ['key', '5v-standby']],
    ['+5V / KEY', ['5v +', 'key']],
    ['NC (+12V)', ['no-connection', '12v +']],
    ['NC / +5V', ['no-connection', '5v +']],
    ['GND or +5V', ['ground', '5v +']],
    ['GND (+12V)', ['ground', '12v +']],
    ['+5V +12V', ['5v +', '12v +']],
    ['(KEY) (5VSB)', ['key', '5v-standby']],
    ['PLED+ HDLED+', ['power-led +', 'drive-led +']],
    ['PLED+ PLED-', ['power-led +', 'power-led -']],
    ['PWRBTN# RST#', ['power-switch', 'reset-switch']],
  ])('“%s” has two meanings in one place, and neither stands before the other', (word, meanings) => {
    expect(everyMeaning(word)).toEqual(meanings);
    expect(matchWord(word).map(({ how }) => how)).toEqual(meanings.map(() => 'twofold'));
  });

  it.each([
    ['+5V (VBUS)', '5v +'],
    ['KEY, no pin', 'key'],
    ['no pin (NC)', 'key'],
    ['Reset switch GND', 'reset-switch -'],
    ['power LED + (+5V)', 'power-led +'],
    ['ground (audio)', 'ground'],
  ])('“%s” says one thing twice, and is no doubt', (word, meaning) => {
    expect(read(word)).toBe(meaning);
    expect(matchWord(word)[0]?.how).not.toBe('twofold');
  });

  it('says how it was understood', () => {
    const how = (word: string) => matchWord(word)[0]?.how;
    expect(how('HDD LED+')).toBe('exact');
    expect(how('hdd_led+')).toBe('normalised');
    expect(how('lamp of the Hard Disk Activity, cathode')).toBe('described');
    expect(how('SPEEKER')).toBe('alike');
    expect(how('KEYLOCK')).toBe('exact');
  });

  it('keeps a joint in a name from being a minus', () => {
    expect(read('HDD-LED')).toBe('drive-led');
    expect(read('HDD-LED+')).toBe('drive-led +');
    expect(read('P-LED-')).toBe('power-led -');
  });

  it.each(['xyzzy', 'the quick brown fox', 'J12', '§§§', '', '   ', 'see page 12'])(
    '“%s” is not understood',
    (word) => {
      expect(matchWord(word)).toEqual([]);
    },
  );
});
