import type { Mm } from '../../base/units';
import type { Point } from '../../drawing/geometry';
import type { Measure } from '../../drawing/measure';
import type { Drawn } from '../page/page';
import { halfCapital, textAt } from '../page/type';

/** A ring with a question mark: measure before you lay anything on it. */
export function doubtSign(centre: Point, radiusMm: Mm, measure: Measure): readonly Drawn[] {
  const sizeMm = radiusMm * 1.7;
  const at = { x: centre.x, y: centre.y + halfCapital(sizeMm) };
  return [
    {
      kind: 'circle',
      centre,
      radiusMm,
      paint: { fill: 'paper', stroke: { ink: 'ink', widthMm: radiusMm * 0.2 } },
    },
    textAt('?', at, { face: 'strong', sizeMm, ink: 'ink' }, measure, 'middle'),
  ];
}

/** A filled corner: two sources say different things. */
export function disputedSign(corner: Point, sideMm: Mm): readonly Drawn[] {
  const { x, y } = corner;
  const points = [corner, { x: x - sideMm, y }, { x, y: y - sideMm }];
  return [{ kind: 'shape', points, paint: { fill: 'ink' } }];
}
