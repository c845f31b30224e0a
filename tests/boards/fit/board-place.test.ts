import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import type { Connector } from '../../../boards/document/connector';
import { boxAt, connectorMiddle, movedPlace, turnedPlace } from '../../../boards/fit/board-place';
import { connectorBox } from '../../../boards/fit/geometry';
import { arbitraryConnector } from '../arbitrary-build';
import { grid, posts } from '../fixtures/bench';

const panel = posts('panel', grid(2, 5), { place: { xMm: 100, yMm: 50, turn: 0 } });

const turn = fc.constantFrom(...TURNS);

function size(connector: Connector): readonly [number, number] {
  const { leftMm, topMm, rightMm, bottomMm } = connectorBox(connector);
  return [rightMm - leftMm, bottomMm - topMm];
}

describe('a connector turned on the board', () => {
  it('of 2 by 5 pins stands a quarter turn further over the same middle, 2 pins wide and 5 deep', () => {
    const place = turnedPlace(panel, 90);
    expect(place).toEqual({ xMm: 106.35, yMm: 46.19, turn: 90 });
    expect(connectorMiddle({ ...panel, place })).toEqual({
      xMm: expect.closeTo(105.08, 6),
      yMm: expect.closeTo(51.27, 6),
    });
    const [width, depth] = size({ ...panel, place });
    expect([width, depth].map((side) => side / 2.54)).toEqual([expect.closeTo(2, 6), expect.closeTo(5, 6)]);
  });

  it('keeps its middle, to the hundredth that a sheet keeps, and its size crosswise', () => {
    fc.assert(
      fc.property(arbitraryConnector('any'), turn, (connector, by) => {
        const place = turnedPlace(connector, by);
        const [before, after] = [connectorMiddle(connector), connectorMiddle({ ...connector, place })];
        expect(Math.hypot(after.xMm - before.xMm, after.yMm - before.yMm)).toBeLessThan(0.0075);
        const [width, depth] = size(connector);
        const turned = size({ ...connector, place });
        expect(turned[0]).toBeCloseTo(by % 180 === 0 ? width : depth, 6);
        expect(turned[1]).toBeCloseTo(by % 180 === 0 ? depth : width, 6);
      }),
      { seed: 90, numRuns: 500 },
    );
  });

  it('is where it was after four quarters, to a hundredth of rounding', () => {
    const round = TURNS.reduce((connector) => ({ ...connector, place: turnedPlace(connector, 90) }), panel);
    expect(round.place).toEqual(panel.place);
  });
});

describe('a connector moved on the board', () => {
  it('goes by so many millimetres, in hundredths, and never past what a sheet can hold', () => {
    expect(movedPlace(panel.place, 0.126, -0.5)).toEqual({ xMm: 100.13, yMm: 49.5, turn: 0 });
    expect(movedPlace(panel.place, 5_000, -5_000)).toEqual({ xMm: 1_000, yMm: -1_000, turn: 0 });
    expect(boxAt(panel, movedPlace(panel.place, 10, 0)).leftMm).toBeCloseTo(
      connectorBox(panel).leftMm + 10,
      9,
    );
  });
});
