import { cornersOf, type Point, type Rect } from '../../drawing/geometry';
import { clippedLine, clippedShape } from '../page/clip';
import type { Drawn } from '../page/page';
import { pen } from '../pinout/drawing-scale';

/** The body of a plug as a strong outline, under pins and names; broken off where the drawing is cut. */
export function drawPlugBody(body: Rect, cut: Rect): readonly Drawn[] {
  const corners = cornersOf(body);
  const ground = clippedShape(corners, cut);
  if (ground.length === 0) return [];
  const edges = corners.flatMap((from, index): readonly Drawn[] => {
    const to = corners[(index + 1) % corners.length] ?? from;
    const line = clippedLine([from, to], cut);
    if (!line) return [];
    return [{ kind: 'line', from: line[0], to: line[1], stroke: { ink: 'ink', widthMm: pen(0.75) } }];
  });
  return [{ kind: 'shape', points: ground, paint: { fill: 'paper' } }, ...edges];
}

/** The moulded triangle that points at the marked hole. */
export function drawMark(mark: readonly [Point, Point, Point]): Drawn {
  return { kind: 'shape', points: mark, paint: { fill: 'ink' } };
}
