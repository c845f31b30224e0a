import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a lead left over though its place is free', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2: the pairs; polarity from assembly notes.
  const board = bench().header('panel-2x5', 'panel').lead('reset-switch-1x2', 'reset');

  test('a doubt, with the place', () => {
    expect(board.finding('lead-left-over')).toMatchObject({
      severity: 'doubt',
      leads: ['reset'],
      pins: [
        { connector: 'panel', pin: '5' },
        { connector: 'panel', pin: '7' },
      ],
      data: { plug: { lead: 'reset', plug: 'plug' }, connector: 'panel' },
      remedies: [{ command: { name: 'seat-plug', args: { connector: 'panel', at: [1, 2] } } }],
    });
  });

  test('seated, or set aside on purpose, it is not left over', () => {
    expect(board.seat('reset', 'panel', '5').codes()).not.toContain('lead-left-over');
    const aside = bench().header('panel-2x5', 'panel').lead('reset-switch-1x2', 'reset', { setAside: true });
    expect(aside.codes()).not.toContain('lead-left-over');
  });
});
