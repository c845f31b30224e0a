import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Connector } from '../../../boards/document/connector';
import type { Outline } from '../../../boards/document/outline';
import { type BoardRemark, boardRemarks, MOST_REMARKS } from '../../../boards/fit/board-remarks';
import { boxesCollide, connectorBox } from '../../../boards/fit/geometry';
import { FORM_FACTOR_ENTRIES } from '../../../boards/library/form-factors';
import { arbitraryBoard } from '../arbitrary-build';
import { bench, grid, posts } from '../fixtures/bench';
import { board as demo } from '../library/demo-files';

const OUTLINE: Outline = { widthMm: 100, depthMm: 80 };

function board(connectors: readonly Connector[], outline: Outline = OUTLINE): BoardSheet {
  return { ...bench(connectors, []).board, outline };
}

function at(id: string, xMm: number, yMm: number): Connector {
  return posts(id, grid(2, 5), { place: { xMm, yMm, turn: 0 } });
}

describe('what a plan says that cannot be so', () => {
  it('nothing about connectors apart on the board, nor about two side by side at one pitch', () => {
    expect(boardRemarks(board([at('a', 10, 10), at('b', 10 + 5 * 2.54, 10), at('c', 10, 60)]))).toEqual([]);
  });

  it('tells of a connector beyond the edge, and of one across it', () => {
    expect(boardRemarks(board([at('gone', 140, 10), at('half', 95, 40), at('above', 10, -30)]))).toEqual([
      { code: 'connector-outside', connector: 'gone' },
      { code: 'connector-over-edge', connector: 'half' },
      { code: 'connector-outside', connector: 'above' },
    ]);
  });

  it('tells of two connectors in one place, once', () => {
    expect(boardRemarks(board([at('a', 20, 20), at('b', 22, 21), at('c', 60, 20)]))).toEqual([
      { code: 'connectors-overlap', connectors: ['a', 'b'] },
    ]);
  });

  it('tells of a mounting hole beyond the edge, by its rim, and of one under a connector', () => {
    const holes = [
      { id: 'rim', xMm: 1.5, yMm: 40, diameterMm: 4 },
      { id: 'point', xMm: 1.5, yMm: 50 },
      { id: 'under', xMm: 22, yMm: 21 },
      { id: 'touching', xMm: 17.5, yMm: 20, diameterMm: 4 },
      { id: 'far', xMm: 140, yMm: 20 },
    ];
    expect(boardRemarks(board([at('a', 20, 20)], { ...OUTLINE, holes }))).toEqual([
      { code: 'hole-outside', hole: 'rim' },
      { code: 'hole-under-connector', hole: 'under', connector: 'a' },
      { code: 'hole-under-connector', hole: 'touching', connector: 'a' },
      { code: 'hole-outside', hole: 'far' },
    ]);
  });

  it('finds nothing on the published sizes, nor on the demo board', () => {
    for (const { outline } of FORM_FACTOR_ENTRIES) expect(boardRemarks(board([], outline))).toEqual([]);
    expect(boardRemarks(demo)).toEqual([]);
  });

  it('tells of the same pairs as when every connector is held against every other', () => {
    fc.assert(
      fc.property(arbitraryBoard, (sheet) => {
        const pairs = sheet.connectors.flatMap((one, place) =>
          sheet.connectors
            .slice(place + 1)
            .filter((other) => boxesCollide(connectorBox(one), connectorBox(other)))
            .map((other) => [one.id, other.id].sort().join(' ')),
        );
        const told = boardRemarks(sheet)
          .filter((remark): remark is BoardRemark & { code: 'connectors-overlap' } => {
            return remark.code === 'connectors-overlap';
          })
          .map(({ connectors }) => [...connectors].sort().join(' '));
        expect(told.sort()).toEqual(pairs.sort());
      }),
      { seed: 244, numRuns: 500 },
    );
  });

  it('stops at a limit when thousands stand in one place', () => {
    const crowd = Array.from({ length: 2_000 }, (_, n) => at(`c-${n}`, 20, 20));
    expect(boardRemarks(board(crowd))).toHaveLength(MOST_REMARKS);
  });
});
