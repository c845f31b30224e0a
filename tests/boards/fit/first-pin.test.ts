import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Corner } from '../../../boards/document/grid';
import { firstPin, placeByFirstPin } from '../../../boards/fit/first-pin';
import { arbitraryConnector } from '../arbitrary-build';
import { grid, posts } from '../fixtures/bench';

/** A header of two rows of five, its first cell 50 mm from the left and 30 mm from the top. */
function panel(from: Corner, turn: 0 | 90 | 180 | 270 = 0) {
  const counted = grid(2, 5, { numbering: { scheme: 'zig-zag', from } });
  return posts('panel', counted, { place: { xMm: 50, yMm: 30, turn } });
}

it('Pin 1 stands in the corner in which counting begins, a row down and four columns along at the farthest', () => {
  const at = (from: Corner) => firstPin(panel(from));
  expect(at('top-left')).toEqual({ label: '1', xMm: 50, yMm: 30 });
  expect(at('bottom-left')).toEqual({ label: '1', xMm: 50, yMm: 32.54 });
  expect(at('bottom-right')).toEqual({ label: '1', xMm: 60.16, yMm: 32.54 });
});

it('Pin 1 goes round with a connector that is turned about its first cell', () => {
  const at = (turn: 90 | 180 | 270) => firstPin(panel('bottom-right', turn));
  expect(at(90)).toEqual({ label: '1', xMm: 47.46, yMm: 40.16 });
  expect(at(180)).toEqual({ label: '1', xMm: 39.84, yMm: 27.46 });
  expect(at(270)).toEqual({ label: '1', xMm: 52.54, yMm: 19.84 });
});

it('The first of free labels is told by its own name', () => {
  const labels = [
    [null, 'A2'],
    ['B1', 'B2'],
  ];
  const free = posts('odd', grid(2, 2, { numbering: { scheme: 'free', labels } }));
  expect(firstPin(free)).toEqual({ label: 'A2', xMm: 2.54, yMm: 0 });
});

it('A connector that is placed by its pin 1 has it there, to the hundredth that a sheet keeps', () => {
  const mm = fc.integer({ min: -500_00, max: 500_00 }).map((hundredth) => hundredth / 100);
  fc.assert(
    fc.property(arbitraryConnector('any'), mm, mm, (connector, xMm, yMm) => {
      const place = placeByFirstPin(connector, { xMm, yMm });
      const stands = firstPin({ ...connector, place });
      for (const off of [stands.xMm - xMm, stands.yMm - yMm]) expect(Math.abs(off)).toBeLessThan(0.0101);
      expect(placeByFirstPin({ ...connector, place }, {})).toEqual(place);
    }),
    { seed: 96, numRuns: 300 },
  );
});
