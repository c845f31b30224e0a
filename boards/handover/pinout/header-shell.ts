import type { Mm } from '../../base/units';
import type { Block } from '../../drawing/block';
import { contains, type Line, type Point, type Rect } from '../../drawing/geometry';
import { clippedLine, clippedShape } from '../page/clip';
import type { Drawn, Stroke } from '../page/page';
import { pen } from './drawing-scale';

/** The shell with its cut corner, filled at pin 1, and the walls of its shroud; broken off where it is cut. */
export function drawShell(block: Block, cut: Rect): readonly Drawn[] {
  const edge: Stroke = { ink: 'ink', widthMm: pen(0.35) };
  const ground = clippedShape(block.outline, cut);
  const outline = block.outline.flatMap((from, index): readonly Line[] => {
    const to = block.outline[(index + 1) % block.outline.length];
    const line = to && clippedLine([from, to], cut);
    return line ? [line] : [];
  });
  const walls = block.walls.flatMap((wall) => clippedLine(wall, cut) ?? []);
  const lines: Drawn[] = [];
  for (const [from, to] of outline) lines.push({ kind: 'line', from, to, stroke: edge });
  for (const [from, to] of chunked(walls)) lines.push({ kind: 'line', from, to, stroke: edge });
  return [
    { kind: 'shape', points: ground, paint: { fill: 'faint' } },
    ...lines,
    ...brokenEdges(ground, cut),
    ...pinOne(block, cut),
  ];
}

function chunked(points: readonly Point[]): readonly Line[] {
  return points.flatMap((from, index) => {
    const to = points[index + 1];
    return index % 2 === 0 && to ? [[from, to] as const] : [];
  });
}

function pinOne({ pinOne: corner }: Block, cut: Rect): readonly Drawn[] {
  if (!corner.every((point) => contains(cut, point))) return [];
  return [{ kind: 'shape', points: corner, paint: { fill: 'ink' } }];
}

/** Dashes where the connector goes on in another part of the drawing. */
function brokenEdges(ground: readonly Point[], cut: Rect): readonly Drawn[] {
  const onCut = ({ x, y }: Point, other: Point) =>
    (near(x, other.x) && (near(x, cut.x) || near(x, cut.x + cut.width))) ||
    (near(y, other.y) && (near(y, cut.y) || near(y, cut.y + cut.height)));
  return ground.flatMap((from, index): readonly Drawn[] => {
    const to = ground[(index + 1) % ground.length];
    if (!to || !onCut(from, to)) return [];
    return [{ kind: 'line', from, to, stroke: { ink: 'line', widthMm: pen(0.3), dashMm: pen(1.2) } }];
  });
}

function near(a: Mm, b: Mm): boolean {
  return Math.abs(a - b) < 1e-6;
}
