import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('two leads in each other’s place', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2: the pairs; polarity from assembly notes.
  const board = bench()
    .header('panel-2x5', 'panel')
    .lead('power-led-1x2', 'power')
    .lead('drive-led-1x2', 'drive');

  test('power LED and drive LED exchanged: told once', () => {
    const build = board.seat('power', 'panel', '1').seat('drive', 'panel', '2');
    expect(build.faults()).toEqual(['places-exchanged']);
    expect(build.finding('places-exchanged')).toMatchObject({
      severity: 'fault',
      leads: ['power', 'drive'],
      data: { first: { lead: 'power', plug: 'plug' }, second: { lead: 'drive', plug: 'plug' } },
    });
  });

  test('each on its own pins is right', () => {
    expect(board.seat('power', 'panel', '2').seat('drive', 'panel', '1').faults()).toEqual([]);
  });
});
