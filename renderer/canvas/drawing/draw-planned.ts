import { samePlug } from '../../../boards/document/lookup';
import { centreOf, type Point } from '../../../boards/drawing/geometry';
import type { Ghost } from '../in-hand';
import type { Scene } from '../scene/scene';
import { drawGhost } from './draw-placing';
import { type Pen, stroke } from './pen';

const HEAD_PX = 11;

/** A plug where it is planned, with an arrow from where it sits now. What sits there now comes off first. */
export function drawPlanned(pen: Pen, { plugs }: Scene, { shape, fit }: Ghost): void {
  const now = plugs.find(({ ref }) => samePlug(ref, shape.ref));
  drawGhost(pen, shape, { ...fit, refusals: [] });
  if (now) drawArrow(pen, centreOf(now.body), centreOf(shape.body), pen.palette.accent);
}

/** Dashed, on a band of ground so that it is seen over everything. */
export function drawArrow(pen: Pen, from: Point, to: Point, style: string): void {
  const { context, palette } = pen;
  const head = stroke(pen, HEAD_PX);
  if (Math.hypot(to.x - from.x, to.y - from.y) < 2 * head) return;
  const along = Math.atan2(to.y - from.y, to.x - from.x);
  const back = (aside: number) => ({
    x: to.x - head * Math.cos(along + aside),
    y: to.y - head * Math.sin(along + aside),
  });
  const [left, right] = [back(0.5), back(-0.5)];
  for (const [colour, pixels] of [
    [palette.panel, 6],
    [style, 2.5],
  ] as const) {
    context.save();
    context.strokeStyle = colour;
    context.lineWidth = stroke(pen, pixels);
    context.setLineDash([stroke(pen, 8), stroke(pen, 5)]);
    context.beginPath();
    context.moveTo(from.x, from.y);
    context.lineTo(to.x, to.y);
    context.stroke();
    context.setLineDash([]);
    context.beginPath();
    context.moveTo(left.x, left.y);
    context.lineTo(to.x, to.y);
    context.lineTo(right.x, right.y);
    context.stroke();
    context.restore();
  }
}
