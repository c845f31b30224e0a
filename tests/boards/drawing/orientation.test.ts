import { describe, expect, it } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import { followedBy, orientationOf, oriented, turned, undone } from '../../../boards/drawing/orientation';

const POINT = { x: 3, y: 7 };
const AS_IT_IS = orientationOf({ turn: 0, mirrored: false });
const MIRRORED = orientationOf({ turn: 0, mirrored: true });

describe('how the board lies', () => {
  it('a quarter turn clockwise brings the right side down', () => {
    expect(oriented(turned(90), { x: 1, y: 0 })).toMatchObject({ x: expect.closeTo(0), y: 1 });
  });

  it('four quarter turns bring it back', () => {
    const quarter = turned(90);
    const four = [quarter, quarter, quarter].reduce(followedBy, quarter);
    expect(oriented(four, POINT)).toEqual(POINT);
  });

  it('mirrored twice, it is as before', () => {
    expect(oriented(followedBy(MIRRORED, MIRRORED), POINT)).toEqual(POINT);
  });

  it('mirrored, left and right change places, top and bottom do not', () => {
    expect(oriented(MIRRORED, POINT)).toEqual({ x: -3, y: 7 });
  });

  it('a further quarter turn looks clockwise, mirrored or not', () => {
    for (const mirrored of [false, true])
      for (const [index, turn] of TURNS.entries()) {
        const next = TURNS[(index + 1) % 4] ?? 0;
        const before = oriented(orientationOf({ turn, mirrored }), POINT);
        const after = oriented(orientationOf({ turn: next, mirrored }), POINT);
        expect(after).toEqual(oriented(turned(90), before));
      }
  });

  it('every orientation can be undone', () => {
    for (const mirrored of [false, true])
      for (const turn of TURNS) {
        const orientation = orientationOf({ turn, mirrored });
        expect(followedBy(orientation, undone(orientation))).toEqual(AS_IT_IS);
      }
  });
});
