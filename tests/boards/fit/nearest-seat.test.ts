import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Build, Seat } from '../../../boards/document/build';
import { connectorOf, plugOf } from '../../../boards/document/lookup';
import { cellUnder, type Point, plugCentre } from '../../../boards/fit/geometry';
import { seatUnder } from '../../../boards/fit/nearest-seat';
import { bench, grid, lead, posts, seat } from '../fixtures/bench';
import { randomBench } from './random-bench';

const RESET = { lead: 'reset', plug: 'plug' };
const build = bench(
  [posts('jfp', grid(2, 5)), posts('far', grid(1, 2), { place: { xMm: 60, yMm: 0, turn: 90 } })],
  [lead('reset', grid(1, 2))],
);

function awayFrom(of: Build, there: Seat, point: Point): number {
  const plug = plugOf(of, there);
  const connector = connectorOf(of.board, there.connector);
  if (!plug || !connector) throw new Error('Not on the bench');
  const { xMm, yMm } = plugCentre(plug, connector, there);
  return Math.hypot(xMm - point.xMm, yMm - point.yMm);
}

describe('the seat under the pointer', () => {
  it('is the one whose middle is nearest', () => {
    expect(seatUnder(build, RESET, 0, { xMm: 1.2, yMm: 0.3 })).toEqual(seat('reset', 'jfp', [0, 0]));
    expect(seatUnder(build, RESET, 0, { xMm: 2.6, yMm: 0.3 })).toEqual(seat('reset', 'jfp', [0, 1]));
    expect(seatUnder(build, RESET, 0, { xMm: 3.8, yMm: 2.2 })).toEqual(seat('reset', 'jfp', [1, 1]));
  });

  it('follows the turn of the plug and of the connector', () => {
    expect(seatUnder(build, RESET, 90, { xMm: 5, yMm: 1.3 })).toEqual(seat('reset', 'jfp', [0, 2], 90));
    expect(seatUnder(build, RESET, 180, { xMm: 1.2, yMm: 0 })).toEqual(seat('reset', 'jfp', [0, 1], 180));
    expect(seatUnder(build, RESET, 0, { xMm: 60, yMm: 1.3 })).toEqual(seat('reset', 'far', [0, 0]));
  });

  it('may hang over the edge, as long as it still covers a position', () => {
    expect(seatUnder(build, RESET, 0, { xMm: -1.4, yMm: 0 })).toEqual(seat('reset', 'jfp', [0, -1]));
    expect(seatUnder(build, RESET, 0, { xMm: -3.5, yMm: 0 })).toEqual(seat('reset', 'jfp', [0, -1]));
  });

  it('is none where every connector is more than about a pitch away', () => {
    expect(seatUnder(build, RESET, 0, { xMm: 30, yMm: 30 })).toBeNull();
  });

  it('is never further away than any other seat that covers a position', () => {
    let near = 0;
    const coordinate = fc.integer({ min: -40, max: 400 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(
        randomBench,
        fc.record({ xMm: coordinate, yMm: coordinate }),
        ({ build: random, seat: { connector: _, at: __, turn, ...ref } }, point) => {
          const distances = everySeatTouching(random, ref, turn).map((each) => awayFrom(random, each, point));
          const found = seatUnder(random, ref, turn, point);
          if (found) {
            near++;
            expect(awayFrom(random, found, point)).toBeCloseTo(Math.min(...distances));
          } else {
            expect(Math.min(...distances)).toBeGreaterThan(2.54);
          }
        },
      ),
      { seed: 7, numRuns: 300 },
    );
    expect(near).toBeGreaterThan(50);
  }, 30_000);
});

function everySeatTouching(of: Build, ref: { lead: string; plug: string }, turn: Seat['turn']): Seat[] {
  const size = plugOf(of, ref)?.grid;
  if (!size) throw new Error('Not on the bench');
  const seats: Seat[] = [];
  for (const { id, grid: pins } of of.board.connectors)
    for (let row = -4; row < 8; row++)
      for (let col = -4; col < 10; col++) {
        const there: Seat = { ...ref, connector: id, at: [row, col], turn };
        const cells = Array.from({ length: size.rows * size.cols }, (_, index) =>
          cellUnder(there, [Math.floor(index / size.cols), index % size.cols]),
        );
        if (cells.some(([r, c]) => r >= 0 && c >= 0 && r < pins.rows && c < pins.cols)) seats.push(there);
      }
  return seats;
}
