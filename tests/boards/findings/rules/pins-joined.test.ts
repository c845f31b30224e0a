import { describe, expect, test } from 'vitest';
import type { Lead } from '../../../../boards/document/lead';
import { singleRow } from '../../../../boards/library/grids';
import { plug } from '../../../../boards/library/plug-and-wires';
import { bench } from '../harness';

describe('a cable with both ends on the board', () => {
  // Common practice, no source: a wire between a supply and ground is a short.
  const cable: Partial<Lead> = {
    parts: [],
    plugs: [plug('one', 'ONE', singleRow(1)), plug('other', 'OTHER', singleRow(1))],
    wires: [{ from: 'one.1', to: 'other.1', colour: 'black' }],
  };
  const board = bench()
    .header('usb2-2x5', 'usb')
    .header('panel-2x5', 'panel')
    .lead('power-led-singles', 'link', cable);

  test('+5 V and ground joined by a wire: a danger', () => {
    const build = board
      .seat('link', 'usb', '1', { plug: 'one' })
      .seat('link', 'panel', '8', { plug: 'other' });
    expect(build.finding('pins-joined')).toMatchObject({
      severity: 'danger',
      leads: ['link'],
      pins: [
        { connector: 'usb', pin: '1' },
        { connector: 'panel', pin: '8' },
      ],
      data: { first: { signal: 'usb-vbus' }, second: { signal: 'ground' } },
    });
  });

  test('an input held at ground: a fault', () => {
    const build = board
      .seat('link', 'panel', '6', { plug: 'one' })
      .seat('link', 'panel', '8', { plug: 'other' });
    expect(build.finding('pins-joined').severity).toBe('fault');
  });

  test('two grounds, or one end alone, are nothing', () => {
    expect(board.seat('link', 'panel', '5', { plug: 'one' }).codes()).not.toContain('pins-joined');
    const grounds = board
      .seat('link', 'panel', '5', { plug: 'one' })
      .seat('link', 'panel', '8', { plug: 'other' });
    expect(grounds.codes()).not.toContain('pins-joined');
  });
});
