import { expect, test } from 'vitest';
import { EXAMPLES } from '../examples';
import { bench } from '../harness';

// Common practice, no source.
test('a cable with both ends on one supply feeds nothing: a fault', () => {
  expect(EXAMPLES['cable-on-one-unit'].finding('cable-on-one-unit')).toMatchObject({
    severity: 'fault',
    leads: ['ash-cpu'],
    data: { on: 'ASH' },
  });
});

test('both ends on one hub, from outlet to outlet, as well; a cable on to another hub is none', () => {
  const hub = bench().unit('fan-hub-header', 'hub').lead('fan-splitter', 'cable');
  const first = hub.seat('cable', 'hub-fan-1', '1', { plug: 'board' });
  expect(first.seat('cable', 'hub-fan-2', '1', { plug: 'first' }).codes()).toContain('cable-on-one-unit');
  const on = first.unit('fan-hub-header', 'next').seat('cable', 'next-fan-1', '1', { plug: 'first' });
  expect(on.codes()).not.toContain('cable-on-one-unit');
});

test('a cable on two headers of the board is told by what it joins, and not as leading back', () => {
  const board = bench()
    .header('fan-1x4', 'one')
    .header('fan-1x4', 'two')
    .lead('fan-splitter', 'cable')
    .seat('cable', 'one', '1', { plug: 'board' })
    .seat('cable', 'two', '1', { plug: 'first' });
  expect(board.codes()).not.toContain('cable-on-one-unit');
});
