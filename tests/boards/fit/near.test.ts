import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../boards/fit/geometry';
import { nearIndex } from '../../../boards/fit/near';

const millimetres = fc.integer({ min: -50, max: 50 });
const size = fc.integer({ min: 1, max: 30 });
const box: fc.Arbitrary<Box> = fc
  .tuple(millimetres, millimetres, size, size)
  .map(([leftMm, topMm, width, depth]) => ({
    leftMm,
    topMm,
    rightMm: leftMm + width,
    bottomMm: topMm + depth,
  }));

describe('the boxes near a box', () => {
  it('are those that going through all of them finds', () => {
    fc.assert(
      fc.property(fc.array(box, { maxLength: 40 }), box, (boxes, asked) => {
        const touching = boxes.filter(
          (each) =>
            each.leftMm <= asked.rightMm &&
            each.rightMm >= asked.leftMm &&
            each.topMm <= asked.bottomMm &&
            each.bottomMm >= asked.topMm,
        );
        const found = nearIndex(boxes, (each) => each)(asked);
        expect(new Set(found)).toEqual(new Set(touching));
        expect(found).toHaveLength(touching.length);
      }),
      { seed: 3, numRuns: 500 },
    );
  });
});
