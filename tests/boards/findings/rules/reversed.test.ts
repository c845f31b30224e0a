import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a plug on its pins the wrong way round', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2: the pairs; polarity from assembly notes.
  const board = bench().header('panel-2x5', 'panel').header('speaker-1x4', 'spk');

  test('an LED stays dark; the remedy turns it where it sits', () => {
    const build = board.lead('power-led-1x2', 'led').seat('led', 'panel', '4', { turn: 180 });
    expect(build.faults()).toEqual(['reversed']);
    expect(build.finding('reversed')).toMatchObject({
      severity: 'fault',
      leads: ['led'],
      data: { part: 'led', effect: 'dark' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'panel', at: [0, 0], turn: 0 } } }],
    });
  });

  test('a two-colour LED shows the other colour: good to know', () => {
    const build = board.lead('two-colour-power-led-1x2', 'led').seat('led', 'panel', '4', { turn: 180 });
    expect(build.finding('reversed')).toMatchObject({ severity: 'note', data: { effect: 'other-colour' } });
  });

  test('a buzzer and an electronic switch are dead', () => {
    // Common practice, no source.
    const buzzer = board.lead('buzzer-1x4', 'beeper').seat('beeper', 'spk', '4', { turn: 180 });
    expect(buzzer.finding('reversed')).toMatchObject({ severity: 'fault', data: { effect: 'dead' } });
    const board2 = board
      .lead('electronic-power-switch-1x2', 'power')
      .seat('power', 'panel', '8', { turn: 180 });
    expect(board2.finding('reversed')).toMatchObject({ severity: 'fault', data: { effect: 'dead' } });
  });

  test('a plain switch and a speaker work both ways: nothing is said', () => {
    const build = board
      .lead('power-switch-1x2', 'power')
      .seat('power', 'panel', '8', { turn: 180 })
      .lead('speaker-1x4', 'beeper')
      .seat('beeper', 'spk', '4', { turn: 180 });
    expect(build.codes()).not.toContain('reversed');
    expect(build.faults()).toEqual([]);
  });
});
