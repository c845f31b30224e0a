import fc from 'fast-check';
import { expect, it } from 'vitest';
import { overlap, type Rect } from '../../../boards/drawing/geometry';
import { rectBuckets } from '../../../renderer/canvas/scene/rect-buckets';

const mm = fc.noBias(fc.integer({ min: -60, max: 60 }));
const size = fc.noBias(fc.integer({ min: 1, max: 30 }));
const bucket = fc.constantFrom(1, 12, 50);
const rect: fc.Arbitrary<Rect> = fc.record({ x: mm, y: mm, width: size, height: size });

it('Rectangles are found by place as if each had been looked at, and what does not count is passed over', () => {
  fc.assert(
    fc.property(fc.array(rect, { maxLength: 12 }), rect, fc.nat(11), bucket, (rects, asked, but, wide) => {
      const buckets = rectBuckets<number>(wide);
      rects.forEach((each, at) => {
        buckets.add(each, at);
      });
      const met = rects.flatMap((each, at) => (overlap(each, asked) ? [at] : []));
      expect(buckets.meeting(asked)).toEqual(met);
      expect(buckets.isTaken(asked)).toBe(met.length > 0);
      expect(buckets.isTaken(asked, (each) => each !== but)).toBe(met.some((each) => each !== but));
    }),
    { seed: 417, numRuns: 300 },
  );
});
