import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a lead that the board has no pins for', () => {
  // Common practice, no source: many boards have no key lock.
  const board = bench().header('usb2-2x5', 'usb').lead('power-led-key-lock-1x5', 'lock');

  test('a note, with the job', () => {
    expect(board.finding('no-place')).toMatchObject({
      severity: 'note',
      leads: ['lock'],
      pins: [],
      data: { plug: { lead: 'lock', plug: 'plug' }, job: 'power-led' },
      remedies: [{ command: { name: 'set-lead-aside', args: { lead: 'lock', aside: true } } }],
    });
  });

  test('a board that has the header has a place', () => {
    expect(board.header('power-led-key-lock-1x5', 'pled').codes()).not.toContain('no-place');
  });
});
