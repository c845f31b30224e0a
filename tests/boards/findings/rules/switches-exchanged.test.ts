import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('power and reset switch in each other’s place', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2: the pairs; polarity from assembly notes.
  const board = bench()
    .header('panel-2x5', 'panel')
    .lead('power-switch-1x2', 'power')
    .lead('reset-switch-1x2', 'reset');

  test('one finding for the two leads, and a way to start', () => {
    const build = board.seat('power', 'panel', '5').seat('reset', 'panel', '6');
    expect(build.codes()).toEqual(['switches-exchanged']);
    expect(build.finding('switches-exchanged')).toMatchObject({
      severity: 'fault',
      leads: ['power', 'reset'],
      data: { power: { lead: 'power', plug: 'plug' }, reset: { lead: 'reset', plug: 'plug' } },
      remedies: [{ command: { name: 'unseat-plug', args: { lead: 'reset', plug: 'plug' } } }],
    });
  });

  test('each on its own pins is right, turned or not', () => {
    expect(board.seat('power', 'panel', '6').seat('reset', 'panel', '7', { turn: 180 }).codes()).toEqual([]);
  });
});
