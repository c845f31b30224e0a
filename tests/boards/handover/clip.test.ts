import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contains, type Point, type Rect } from '../../../boards/drawing/geometry';
import { clippedLine, clippedShape } from '../../../boards/handover/page/clip';

const RECT: Rect = { x: 0, y: 0, width: 10, height: 5 };

test('A line across is cut at both edges', () => {
  expect(
    clippedLine(
      [
        { x: -5, y: 1 },
        { x: 15, y: 1 },
      ],
      RECT,
    ),
  ).toEqual([
    { x: 0, y: 1 },
    { x: 10, y: 1 },
  ]);
});

test('A line past the corner is not there', () => {
  expect(
    clippedLine(
      [
        { x: -1, y: 4 },
        { x: 3, y: 9 },
      ],
      RECT,
    ),
  ).toBeUndefined();
});

test('A triangle cut by a straight edge becomes four-sided', () => {
  const shape = clippedShape(
    [
      { x: 2, y: 1 },
      { x: 8, y: 1 },
      { x: 5, y: 9 },
    ],
    RECT,
  );
  expect(shape.toSorted((a, b) => a.x - b.x || a.y - b.y)).toEqual([
    { x: 2, y: 1 },
    { x: 3.5, y: 5 },
    { x: 6.5, y: 5 },
    { x: 8, y: 1 },
  ]);
});

test('What is cut lies inside, and along any line every point inside is kept', () => {
  const point = fc.record({ x: fc.integer({ min: -20, max: 20 }), y: fc.integer({ min: -20, max: 20 }) });
  fc.assert(
    fc.property(point, point, fc.double({ min: 0, max: 1, noNaN: true }), (from, to, share) => {
      const on: Point = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
      const cut = clippedLine([from, to], RECT);
      const slack = {
        x: RECT.x - 1e-6,
        y: RECT.y - 1e-6,
        width: RECT.width + 2e-6,
        height: RECT.height + 2e-6,
      };
      for (const end of cut ?? []) expect(contains(slack, end)).toBe(true);
      const deep = { x: 0.001, y: 0.001, width: 9.998, height: 4.998 };
      if (!contains(deep, on) || (from.x === to.x && from.y === to.y)) return;
      if (!cut) throw new Error('A line with a point inside has a part inside');
      const [a, b] = cut;
      const within = (value: number, one: number, other: number) =>
        value >= Math.min(one, other) - 1e-6 && value <= Math.max(one, other) + 1e-6;
      expect(within(on.x, a.x, b.x) && within(on.y, a.y, b.y)).toBe(true);
    }),
  );
});
