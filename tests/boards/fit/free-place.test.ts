import { describe, expect, it } from 'vitest';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Connector } from '../../../boards/document/connector';
import { boxAt } from '../../../boards/fit/board-place';
import { boardRemarks } from '../../../boards/fit/board-remarks';
import { freePlace } from '../../../boards/fit/free-place';
import { connectorBox } from '../../../boards/fit/geometry';
import { bench, grid, posts } from '../fixtures/bench';

const NEAR = { xMm: 10, yMm: 15 };
const fresh = posts('fresh', grid(2, 5));

function board(connectors: readonly Connector[]): BoardSheet {
  return { ...bench(connectors, []).board, outline: { widthMm: 100, depthMm: 80 } };
}

describe('the place of a new connector', () => {
  it('is the wanted one on an empty board', () => {
    expect(freePlace(board([]), fresh, NEAR)).toEqual({ ...NEAR, turn: 0 });
  });

  it('is one of its own, one after another, until the board is full; then below everything', () => {
    let sheet = board([]);
    for (let at = 0; at < 60; at++) {
      const place = freePlace(sheet, fresh, NEAR);
      const { bottomMm } = boxAt(fresh, place);
      if (bottomMm > 80) {
        const lowest = Math.max(...sheet.connectors.map((each) => connectorBox(each).bottomMm));
        expect(boxAt(fresh, place).topMm).toBeGreaterThan(lowest);
        expect(at).toBeGreaterThan(15);
        return;
      }
      sheet = board([...sheet.connectors, { ...fresh, id: `c-${at}`, place }]);
      expect(boardRemarks(sheet)).toEqual([]);
    }
    throw new Error('Sixty connectors of 12.7 by 5 mm do not fit on 100 by 80 mm with room between them');
  });

  it('keeps the turn, and can be kept even where thousands stand', () => {
    const crowd = Array.from({ length: 2_000 }, (_, at) =>
      posts(`c-${at}`, grid(2, 5), { place: { xMm: (at % 50) * 2, yMm: (at / 50) * 2, turn: 0 } }),
    );
    const turned: Connector = { ...fresh, place: { xMm: 0, yMm: 0, turn: 90 } };
    const place = freePlace(board(crowd), turned, NEAR);
    expect(place.turn).toBe(90);
    expect(Math.abs(place.yMm)).toBeLessThanOrEqual(1_000);
  });
});
