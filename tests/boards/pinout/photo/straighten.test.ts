import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Grid } from '../../../../boards/document/grid';
import { type Matrix3, mapped } from '../../../../boards/pinout/photo/matrix3';
import {
  fromView,
  type Pixels,
  type StraightView,
  straightenRows,
  toView,
  viewOfGrid,
  viewSize,
} from '../../../../boards/pinout/photo/straighten';
import { arbitrarySeed } from '../../arbitrary-build';
import { Dice } from '../../dice';
import { anyCamera, cameraMap, middleOf, seen } from './camera';

const GRID: Grid = { rows: 2, cols: 5, pitchMm: 2.54, numbering: { scheme: 'zig-zag', from: 'top-left' } };

function blank(width: number, height: number): Pixels {
  return { width, height, data: new Uint8ClampedArray(width * height * 4) };
}

function straightened(photo: Pixels, toPx: Matrix3, view: StraightView, slice = 1_000): Pixels {
  const { width, height } = viewSize(view);
  const into = blank(width, height);
  for (let from = 0; from < height; from += slice)
    straightenRows(photo, toPx, view, into, from, Math.min(height, from + slice));
  return into;
}

/** A smooth picture whose brightness anywhere is known: red by x, green by y, blue by both. */
function slope(width: number, height: number): Pixels {
  const photo = blank(width, height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) photo.data.set([...shade(x + 0.5, y + 0.5), 255], (y * width + x) * 4);
  return photo;
}

function shade(x: number, y: number): readonly [number, number, number] {
  return [x / 2, y / 2, (x + y) / 4];
}

/** The obvious way, one channel after the other in floating point, for comparison. */
function mixedAt({ width, height, data }: Pixels, x: number, y: number, channel: number): number {
  const at = (column: number, row: number) =>
    data[
      (Math.max(0, Math.min(height - 1, row)) * width + Math.max(0, Math.min(width - 1, column))) * 4 +
        channel
    ] ?? 0;
  const [left, top] = [Math.floor(x - 0.5), Math.floor(y - 0.5)];
  const [fx, fy] = [x - 0.5 - left, y - 0.5 - top];
  return (
    at(left, top) * (1 - fx) * (1 - fy) +
    at(left + 1, top) * fx * (1 - fy) +
    at(left, top + 1) * (1 - fx) * fy +
    at(left + 1, top + 1) * fx * fy
  );
}

describe('a straightened photo', () => {
  it('shows at every pixel what the camera saw at that place of the connector', () => {
    const photo = slope(400, 300);
    for (let seed = 1; seed <= 20; seed++) {
      const camera = { ...anyCamera(new Dice(seed)), awayMm: 80, widthPx: 400, heightPx: 300, focalPx: 900 };
      const toPx = cameraMap(camera, middleOf(GRID));
      const view = viewOfGrid(GRID, 1, 90, seed % 2 === 0);
      const straight = straightened(photo, toPx, view);
      const back = fromView(view);
      for (let y = 0; y < straight.height; y++) {
        for (let x = 0; x < straight.width; x++) {
          const there = seen(toPx, mapped(back, { x: x + 0.5, y: y + 0.5 }));
          const inside = there.x > 0 && there.y > 0 && there.x < 400 && there.y < 300;
          const at = (y * straight.width + x) * 4;
          expect(straight.data[at + 3]).toBe(inside ? 255 : 0);
          if (!inside) continue;
          shade(there.x, there.y).forEach((value, channel) => {
            // A step of the picture's own eight bits, and one of the mixing.
            expect(Math.abs((straight.data[at + channel] ?? 0) - value)).toBeLessThan(1.6);
          });
        }
      }
    }
  });

  it('mixes as the obvious way in floating point does, to one step of 255', () => {
    fc.assert(
      fc.property(arbitrarySeed, (seed) => {
        const dice = new Dice(seed);
        const photo = blank(9, 7);
        for (let at = 0; at < photo.data.length; at++) photo.data[at] = dice.below(256);
        const view = { leftMm: 0, topMm: 0, widthMm: 9, heightMm: 7, pxPerMm: 3, mirrored: false };
        const toPx: Matrix3 = [0.9, 0.11, 0.3, -0.08, 0.93, 0.4, 0, 0, 1];
        const straight = straightened(photo, toPx, view);
        for (let y = 0; y < straight.height; y++) {
          for (let x = 0; x < straight.width; x++) {
            const there = seen(toPx, { x: (x + 0.5) / 3, y: (y + 0.5) / 3 });
            if (!(there.x > 0 && there.y > 0 && there.x < 9 && there.y < 7)) continue;
            for (let channel = 0; channel < 4; channel++) {
              const value = straight.data[(y * straight.width + x) * 4 + channel] ?? 0;
              // Shares are in 256ths: up to two of them with 255 steps each, and the rounding.
              expect(Math.abs(value - mixedAt(photo, there.x, there.y, channel))).toBeLessThan(3);
            }
          }
        }
      }),
      { seed: 20_260_408, numRuns: 50 },
    );
  });

  it('of a view at the photo’s own scale is the photo itself, to the bit', () => {
    const photo = slope(40, 30);
    const view = { leftMm: 0, topMm: 0, widthMm: 40, heightMm: 30, pxPerMm: 1, mirrored: false };
    expect(straightened(photo, [1, 0, 0, 0, 1, 0, 0, 0, 1], view).data).toEqual(photo.data);
  });

  it('is the same in slices of any height as at once', () => {
    const photo = slope(120, 90);
    const toPx: Matrix3 = [4, 0.5, 10, -0.4, 4, 12, 0.002, 0.003, 1];
    const view = viewOfGrid(GRID, 2, 120, false);
    const whole = straightened(photo, toPx, view);
    for (const slice of [1, 7, 32]) expect(straightened(photo, toPx, view, slice).data).toEqual(whole.data);
  });

  it('mirrored twice is the picture that was not mirrored', () => {
    const photo = slope(120, 90);
    const toPx: Matrix3 = [4, 0.5, 10, -0.4, 4, 12, 0.002, 0.003, 1];
    const view = viewOfGrid(GRID, 2, 120, false);
    const once = straightened(photo, toPx, { ...view, mirrored: true });
    const flat = { leftMm: 0, topMm: 0, widthMm: once.width, heightMm: once.height, pxPerMm: 1 };
    const same: Matrix3 = [1, 0, 0, 0, 1, 0, 0, 0, 1];
    const twice = straightened(once, same, { ...flat, mirrored: true });
    const plain = straightened(photo, toPx, view);
    expect(twice.data.every((value, at) => Math.abs(value - (plain.data[at] ?? 0)) <= 2)).toBe(true);
    expect(once.data).not.toEqual(plain.data);
  });

  it('beyond the horizon and beside the photo stays clear', () => {
    const photo = slope(40, 30);
    const view = { leftMm: -50, topMm: -50, widthMm: 100, heightMm: 100, pxPerMm: 1, mirrored: false };
    const horizon: Matrix3 = [1, 0, 20, 0, 1, 15, 0.05, 0, 1];
    const straight = straightened(photo, horizon, view);
    for (let y = 0; y < 100; y++)
      for (let x = 0; x < 30; x++) expect(straight.data[(y * 100 + x) * 4 + 3]).toBe(0);
    expect(straight.data.some((value, at) => at % 4 === 3 && value === 255)).toBe(true);
  });
});

it('a place of the connector is the same there and back in any view, plain or mirrored', () => {
  const mm = fc.double({ min: -50, max: 50, noNaN: true });
  const size = fc.double({ min: 1, max: 100, noNaN: true });
  const view = fc.record({
    leftMm: mm,
    topMm: mm,
    widthMm: size,
    heightMm: size,
    pxPerMm: size,
    mirrored: fc.boolean(),
  });
  fc.assert(
    fc.property(view, mm, mm, (one, x, y) => {
      const there = mapped(fromView(one), mapped(toView(one), { x, y }));
      expect(Math.hypot(there.x - x, there.y - y)).toBeLessThan(1e-9);
      const mirrored = mapped(toView({ ...one, mirrored: !one.mirrored }), { x, y });
      const plain = mapped(toView(one), { x, y });
      expect(mirrored.x + plain.x).toBeCloseTo(one.widthMm * one.pxPerMm, 6);
      expect(mirrored.y).toBe(plain.y);
    }),
    { seed: 20_260_409 },
  );
});
