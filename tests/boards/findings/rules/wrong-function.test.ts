import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a lead on the pins of another function', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2: the pairs; polarity from assembly notes.
  const board = bench()
    .header('panel-2x5', 'panel')
    .lead('reset-switch-1x2', 'reset')
    .lead('power-switch-1x2', 'power');

  test('a reset switch on the power switch pins would start the machine', () => {
    const build = board.seat('reset', 'panel', '6');
    expect(build.finding('wrong-function')).toMatchObject({
      severity: 'fault',
      leads: ['reset'],
      pins: [
        { connector: 'panel', pin: '6' },
        { connector: 'panel', pin: '8' },
      ],
      data: {
        part: 'switch',
        acts: 'power-switch',
        meetings: [
          { hole: '1', terminal: 'a', signal: 'power-switch-input' },
          { hole: '2', terminal: 'b', signal: 'ground' },
        ],
      },
      remedies: [{ command: { name: 'seat-plug', args: { lead: 'reset', connector: 'panel', at: [1, 2] } } }],
    });
  });

  test('an open switch on LED pins does nothing', () => {
    expect(board.seat('power', 'panel', '1').finding('wrong-function').data.acts).toBeUndefined();
  });

  test('a power switch works between its input and any ground', () => {
    expect(board.seat('power', 'panel', '6', { turn: 90 }).faults()).toEqual([]);
    expect(board.seat('power', 'panel', '6').faults()).toEqual([]);
  });

  test('a cap away from its jumper is a doubt: boards have many jumpers', () => {
    // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.3.4.4: caps on 5-6 and 9-10 without an AC’97 panel.
    const build = bench()
      .header('ac97-audio-2x5', 'audio')
      .lead('jumper-cap-1x2', 'cap')
      .seat('cap', 'audio', '6', { turn: 90 });
    expect(build.finding('wrong-function').severity).toBe('doubt');
    expect(build.faults()).toEqual([]);
  });
});
