import { describe, expect, it } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import { SIDES } from '../../../boards/document/connector';
import {
  boxesCollide,
  cellCentre,
  cellUnder,
  connectorBox,
  plugBox,
  plugCentre,
  turnBack,
  turnedPoint,
  turnedSide,
} from '../../../boards/fit/geometry';
import { grid, lead, posts } from '../fixtures/bench';

const header = posts('jfp', grid(2, 5), { place: { xMm: 10, yMm: 20, turn: 90 } });
const [block] = lead('block', grid(2, 3)).plugs;
if (!block) throw new Error('A lead has a plug');

describe('cells and millimetres', () => {
  it('a plug turned a quarter clockwise has its row going down the connector', () => {
    const along = TURNS.map((turn) => cellUnder({ at: [3, 3], turn }, [0, 1]));
    expect(along).toEqual([
      [3, 4],
      [4, 3],
      [3, 2],
      [2, 3],
    ]);
    const down = TURNS.map((turn) => cellUnder({ at: [3, 3], turn }, [1, 0]));
    expect(down).toEqual([
      [4, 3],
      [3, 2],
      [2, 3],
      [3, 4],
    ]);
  });

  it('a connector turned a quarter clockwise has its columns going down the board', () => {
    expect(cellCentre(header, [0, 2])).toEqual({ xMm: 10, yMm: 20 + 2 * 2.54 });
    expect(cellCentre(header, [1, 0])).toEqual({ xMm: 10 - 2.54, yMm: 20 });
  });

  it('a rectangle reaches half a pitch past the outermost positions', () => {
    const box = connectorBox(header);
    expect(box.leftMm).toBeCloseTo(10 - 1.5 * 2.54);
    expect(box.rightMm).toBeCloseTo(10 + 0.5 * 2.54);
    expect(box.topMm).toBeCloseTo(20 - 0.5 * 2.54);
    expect(box.bottomMm).toBeCloseTo(20 + 4.5 * 2.54);
  });

  it('a plug keeps its own pitch where it does not fit', () => {
    const [fine] = lead('fine', grid(1, 3, { pitchMm: 2 })).plugs;
    if (!fine) throw new Error('A lead has a plug');
    const open = posts('jfp', grid(1, 3));
    expect(plugBox(fine, open, { at: [0, 0], turn: 0 })).toEqual({
      leftMm: -1,
      topMm: -1,
      rightMm: 5,
      bottomMm: 1,
    });
  });

  it('the middle of a plug is the middle of its rectangle, however it is turned', () => {
    for (const turn of TURNS) {
      const box = plugBox(block, header, { at: [0, 1], turn });
      const middle = plugCentre(block, header, { at: [0, 1], turn });
      expect(middle.xMm).toBeCloseTo((box.leftMm + box.rightMm) / 2);
      expect(middle.yMm).toBeCloseTo((box.topMm + box.bottomMm) / 2);
    }
  });

  it('turning back undoes a turn, for points and for sides', () => {
    for (const turn of TURNS) {
      expect(turnedPoint(turnedPoint({ xMm: 3, yMm: 5 }, turn), turnBack(turn))).toEqual({ xMm: 3, yMm: 5 });
      for (const side of SIDES) expect(turnedSide(turnedSide(side, turn), turnBack(turn))).toBe(side);
    }
    expect(turnedSide('top', 90)).toBe('right');
  });

  it('bodies may press a fifth of a millimetre into each other and no more', () => {
    const body = { leftMm: 0, topMm: 0, rightMm: 2.54, bottomMm: 2.54 };
    const moved = (mm: number) => ({ ...body, leftMm: mm, rightMm: mm + 2.54 });
    expect(boxesCollide(body, moved(2.54))).toBe(false);
    expect(boxesCollide(body, moved(2.35))).toBe(false);
    expect(boxesCollide(body, moved(2.33))).toBe(true);
  });
});
