import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Connector, Place } from '../../../boards/document/connector';
import { boxAt } from '../../../boards/fit/board-place';
import { guidesAt, snappedPlace } from '../../../renderer/canvas/plan/snap';
import { PLAN_STEPS } from '../../../renderer/store/session';
import { bench, grid, posts } from '../../boards/fixtures/bench';

const OUTLINE = { widthMm: 100, depthMm: 80 };
const usb = posts('usb', grid(2, 5), { place: { xMm: 20, yMm: 60, turn: 0 } });
const fan = posts('fan', grid(1, 4), { place: { xMm: 50, yMm: 20, turn: 0 } });
const board: BoardSheet = { ...bench([usb, fan], []).board, outline: OUTLINE };

function at(xMm: number, yMm: number): Place {
  return { xMm, yMm, turn: 0 };
}

/** Places off every level of the board, so that only the step decides. */
const OFF_LEVEL = at(34.567, 41.234);

describe('a connector dragged over the plan', () => {
  it('snaps its first position to tenths of a millimetre', () => {
    expect(snappedPlace(board, fan, OFF_LEVEL, 'tenth-mm', 0)).toEqual(at(34.6, 41.2));
  });

  it('snaps to tenths of an inch, which are 2.54 mm (the inch of 1959 is 25.4 mm)', () => {
    const { xMm, yMm } = snappedPlace(board, fan, OFF_LEVEL, 'tenth-inch', 3);
    expect([xMm / 2.54, yMm / 2.54]).toEqual([expect.closeTo(14, 6), expect.closeTo(16, 6)]);
  });

  it('snaps to nothing but the hundredths that a sheet is kept in', () => {
    expect(snappedPlace(board, fan, OFF_LEVEL, 'free', 0)).toEqual(at(34.57, 41.23));
  });

  it('comes level with the row of another connector, with a line along both', () => {
    // The fan header has one row: its upper side is level with that of the socket’s upper row at 60 mm.
    const place = snappedPlace(board, fan, at(70, 60.4), 'tenth-mm', 1);
    expect(place).toEqual(at(70, 60));
    const lines = guidesAt(board, fan, place).filter(({ axis }) => axis === 'y');
    expect(lines).toContainEqual({
      axis: 'y',
      atMm: expect.closeTo(60 - 1.27, 6),
      fromMm: expect.closeTo(20 - 1.27, 6),
      toMm: expect.closeTo(70 + 3.5 * 2.54, 6),
    });
  });

  it('comes level with the edge of the board', () => {
    const place = snappedPlace(board, fan, at(1, 41.234), 'tenth-mm', 1);
    expect(boxAt(fan, place).leftMm).toBeCloseTo(0, 6);
    expect(guidesAt(board, fan, place)).toContainEqual({ axis: 'x', atMm: 0, fromMm: 0, toMm: 80 });
  });

  it('is not pulled off the inch grid', () => {
    const { yMm } = snappedPlace(board, fan, at(70, 60.4), 'tenth-inch', 1);
    expect(yMm / 2.54).toBeCloseTo(Math.round(yMm / 2.54), 6);
  });

  it('never jumps further than the reach, or half a step where nothing is near', () => {
    const anywhere = fc.double({ min: -50, max: 150, noNaN: true });
    const any = fc.tuple(
      anywhere,
      anywhere,
      fc.constantFrom(...PLAN_STEPS),
      fc.double({ min: 0, max: 3, noNaN: true }),
    );
    fc.assert(
      fc.property(any, ([xMm, yMm, step, reach]) => {
        const place = snappedPlace(board, fan, at(xMm, yMm), step, reach);
        const furthest = Math.max(step === 'tenth-inch' ? 1.27 : reach, 0.05) + 0.0051;
        expect(Math.abs(place.xMm - xMm)).toBeLessThanOrEqual(furthest);
        expect(Math.abs(place.yMm - yMm)).toBeLessThanOrEqual(furthest);
        expect([place.xMm, place.yMm].map((mm) => Math.round(mm * 100) / 100)).toEqual([
          place.xMm,
          place.yMm,
        ]);
      }),
      { seed: 254, numRuns: 1_000 },
    );
  });

  it('is never level with itself', () => {
    const alone: BoardSheet = { ...board, connectors: [fan] };
    const own: Connector = fan;
    expect(guidesAt(alone, own, OFF_LEVEL)).toEqual([]);
  });
});
