import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fitted,
  pannedBy,
  SCALE_LIMITS,
  toMm,
  toScreen,
  windowOf,
  zoomedAt,
} from '../../../renderer/canvas/view';

const SIZE = { width: 900, height: 600 };
const VIEW = { scale: 10, x: 30, y: -40 };

describe('the view', () => {
  it('zooming keeps the point under the pointer there', () => {
    const pixel = fc.double({ min: 0, max: 900, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 50, noNaN: true }), pixel, pixel, (factor, x, y) => {
        const after = toMm(zoomedAt(VIEW, factor, { x, y }), { x, y });
        const before = toMm(VIEW, { x, y });
        expect(after.x).toBeCloseTo(before.x, 6);
        expect(after.y).toBeCloseTo(before.y, 6);
      }),
      { seed: 20261125 },
    );
  });

  it('stays between 0.4 and 120 pixels a millimetre', () => {
    expect(zoomedAt(VIEW, 1000, { x: 0, y: 0 }).scale).toBe(120);
    expect(zoomedAt(VIEW, 0.0001, { x: 0, y: 0 }).scale).toBe(0.4);
    expect(SCALE_LIMITS).toEqual({ least: 0.4, most: 120 });
  });

  it('panning moves the drawing with the pointer', () => {
    const point = toMm(VIEW, { x: 100, y: 100 });
    expect(toScreen(pannedBy(VIEW, 5, -7), point)).toEqual({ x: 105, y: 93 });
  });

  it('fitting shows the whole of a connector in the middle, no nearer than asked', () => {
    const rect = { x: 100, y: 200, width: 20, height: 10 };
    const view = fitted(rect, SIZE, 40, 30);
    expect(view.scale).toBe(30);
    const window = windowOf(view, SIZE);
    expect(window.x + window.width / 2).toBeCloseTo(110);
    expect(window.y + window.height / 2).toBeCloseTo(205);
  });

  it('fitting a whole board leaves the margin', () => {
    const view = fitted({ x: 0, y: 0, width: 244, height: 244 }, SIZE, 40, 30);
    expect(toScreen(view, { x: 122, y: 0 }).y).toBeCloseTo(40);
    expect(toScreen(view, { x: 122, y: 244 }).y).toBeCloseTo(560);
  });
});
