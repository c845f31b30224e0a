import { describe, expect, test } from 'vitest';
import { bench } from '../harness';

describe('a pair split over two functions', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2: the pairs; polarity from assembly notes.
  const board = bench()
    .header('panel-2x5', 'panel')
    .lead('power-led-singles', 'led')
    .lead('power-switch-1x2', 'power');

  test('a switch with one leg on the power LED and one on the drive LED', () => {
    const build = board.seat('power', 'panel', '2', { turn: 90 });
    expect(build.finding('pair-split')).toMatchObject({
      severity: 'fault',
      leads: ['power'],
      data: { part: 'switch', jobs: ['power-led', 'drive-led'] },
    });
  });

  test('an LED with its + on its own pin and its − on the reset input', () => {
    const build = board
      .seat('led', 'panel', '2', { plug: 'plus' })
      .seat('led', 'panel', '7', { plug: 'minus' });
    expect(build.finding('pair-split')).toMatchObject({
      severity: 'fault',
      leads: ['led'],
      pins: [
        { connector: 'panel', pin: '2' },
        { connector: 'panel', pin: '7' },
      ],
      data: { part: 'led', jobs: ['power-led', 'reset-switch'] },
    });
  });

  test('a drive LED from the power LED + to its own − works, on the other’s pin: a doubt', () => {
    // Worked out from the same order: pin 2 is a feed like pin 1, pin 3 is what the drive switches.
    const build = bench()
      .header('panel-2x5', 'panel')
      .lead('power-led-singles', 'drive', { parts: [{ id: 'led', kind: 'drive-led' }] })
      .seat('drive', 'panel', '2', { plug: 'plus' })
      .seat('drive', 'panel', '3', { plug: 'minus' });
    expect(build.finding('pair-split')).toMatchObject({ severity: 'doubt', data: { acts: 'drive-led' } });
  });

  test('both wires on one pair are right', () => {
    const build = board
      .seat('led', 'panel', '2', { plug: 'plus' })
      .seat('led', 'panel', '4', { plug: 'minus' });
    expect(build.faults()).not.toContain('pair-split');
  });
});
