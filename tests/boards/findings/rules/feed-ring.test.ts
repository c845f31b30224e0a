import { expect, test } from 'vitest';
import { bench } from '../harness';

/** Hubs in a row, each fed by a cable from an outlet of the one before. */
function chain(...hubs: readonly string[]) {
  const all = hubs.reduce((made, hub) => made.unit('fan-hub-header', hub), bench());
  return hubs.slice(1).reduce((made, hub, at) => {
    const before = hubs[at] ?? '';
    return made
      .lead('fan-splitter', `to-${hub}`)
      .seat(`to-${hub}`, `${before}-fan-1`, '1', { plug: 'board' })
      .seat(`to-${hub}`, `${hub}-fan-2`, '1', { plug: 'first' });
  }, all);
}

// Common practice, no source: power is handed on in one direction.
test('a hub behind a hub behind a hub is no ring', () => {
  expect(chain('one', 'two', 'three').codes()).not.toContain('feed-ring');
});

test('a cable from the last back to the first closes one, told once with all its hubs', () => {
  const ring = chain('one', 'two', 'three')
    .lead('fan-splitter', 'back')
    .seat('back', 'three-fan-3', '1', { plug: 'board' })
    .seat('back', 'one-fan-3', '1', { plug: 'first' });
  const found = ring.all('feed-ring');
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({
    severity: 'fault',
    leads: expect.arrayContaining(['to-two', 'to-three', 'back']),
  });
  expect(found[0]?.data.units.toSorted()).toEqual(['one', 'three', 'two']);
});

test('a hub beside the ring is not of it', () => {
  const ring = chain('one', 'two', 'beside')
    .lead('fan-splitter', 'back')
    .seat('back', 'two-fan-3', '1', { plug: 'board' })
    .seat('back', 'one-fan-3', '1', { plug: 'first' });
  expect(ring.finding('feed-ring').data.units.toSorted()).toEqual(['one', 'two']);
});
