import { centreOf, contains, cornersOf, type Point, type Rect } from '../../drawing/geometry';
import type { PlugShape } from '../../drawing/plug-shape';
import { clippedLine, clippedShape } from '../page/clip';
import type { Drawn } from '../page/page';
import { pen } from '../pinout/drawing-scale';

/** The body of a plug as a strong outline, under pins and names, with the holes that lie over nothing; cut off with the drawing. */
export function drawPlugBody(
  { body, holes }: Pick<PlugShape, 'body' | 'holes'>,
  cut: Rect,
): readonly Drawn[] {
  const corners = cornersOf(body);
  const ground = clippedShape(corners, cut);
  if (ground.length === 0) return [];
  const edges = corners.flatMap((from, index): readonly Drawn[] => {
    const to = corners[(index + 1) % corners.length] ?? from;
    const line = clippedLine([from, to], cut);
    if (!line) return [];
    return [{ kind: 'line', from: line[0], to: line[1], stroke: { ink: 'ink', widthMm: pen(0.75) } }];
  });
  // Pins are drawn over the others.
  const empty = holes
    .filter(({ pin, box }) => pin === undefined && contains(cut, centreOf(box)))
    .map(({ box }): Drawn => {
      return {
        kind: 'rect',
        box,
        paint: { stroke: { ink: 'soft', widthMm: pen(0.25), dashMm: box.width / 7 } },
      };
    });
  return [{ kind: 'shape', points: ground, paint: { fill: 'paper' } }, ...edges, ...empty];
}

/** The moulded triangle that points at the marked hole. */
export function drawMark(mark: readonly [Point, Point, Point]): Drawn {
  return { kind: 'shape', points: mark, paint: { fill: 'ink' } };
}
