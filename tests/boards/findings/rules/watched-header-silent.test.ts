import { describe, expect, test } from 'vitest';
import type { FanRating, Rating } from '../../../../boards/document/rating';
import { makeConnector } from '../../../../boards/library/make-connector';
import { type Bench, bench } from '../harness';

function socket(id: string, yMm: number, rating?: Rating) {
  const made = makeConnector('fan-1x4', { id, print: id.toUpperCase(), place: { xMm: 20, yMm, turn: 0 } });
  return rating ? { ...made, rating } : made;
}

function fan(build: Bench, id: string, cools: FanRating['cools']): Bench {
  const rating = { runningAmps: 0.2, startAmps: 0.5, cools };
  return build.lead('fan-1x4', id, { parts: [{ id: 'fan', kind: 'fan', fan: rating }] });
}

// Common practice, no source: an empty watched header stops the start.
describe('a header that the board watches', () => {
  const board = bench()
    .connector(socket('cpu-fan', 20, { watched: true }))
    .connector(socket('fan-1', 60));

  test('without a fan stops the start, and is told which fan belongs there', () => {
    const cooler = fan(board, 'cooler', 'processor').seat('cooler', 'fan-1', '1');
    expect(cooler.finding('watched-header-silent')).toMatchObject({
      severity: 'fault',
      leads: ['cooler'],
      data: { connector: 'cpu-fan', fan: 'cooler', isEmpty: true },
    });
  });

  test('hears nothing of a fan without a speed wire', () => {
    const old = board.lead('fan-1x2', 'old').seat('old', 'cpu-fan', '1');
    expect(old.finding('watched-header-silent')).toMatchObject({
      severity: 'fault',
      data: { fan: 'old', isEmpty: false },
    });
  });

  test('with one is content', () => {
    expect(fan(board, 'cooler', 'processor').seat('cooler', 'cpu-fan', '1').codes()).toEqual([]);
  });
});
