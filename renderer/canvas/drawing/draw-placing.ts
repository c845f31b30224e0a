import type { Point, Rect } from '../../../boards/drawing/geometry';
import type { PlugShape } from '../../../boards/drawing/plug-shape';
import type { Fit } from '../../../boards/fit/fit';
import { drawHoles, traceBody } from './draw-plug';
import { type Pen, stroke, traceRect } from './pen';

/** Quiet spots where the middle of the plug would lie in each place where it fits, turned as it is held. */
export function drawAnchors(pen: Pen, anchors: readonly Point[]): void {
  const { context, palette } = pen;
  context.beginPath();
  const radius = Math.max(0.16, 2.5 / pen.scale);
  for (const { x, y } of anchors) {
    context.moveTo(x + radius, y);
    context.arc(x, y, radius, 0, 2 * Math.PI);
  }
  context.fillStyle = palette.panel;
  context.fill();
  context.strokeStyle = palette.accent;
  context.lineWidth = stroke(pen, 2, 0.07);
  context.stroke();
}

/** The plug where it would go: a solid outline where it fits, dashed where it hangs over, hatched where it is refused. */
export function drawGhost(pen: Pen, plug: PlugShape, fit: Fit): void {
  const { context, palette } = pen;
  const refused = fit.refusals.length > 0;
  context.save();
  context.beginPath();
  traceBody(context, plug);
  for (const hole of plug.holes) if (hole.pin !== undefined) traceRect(context, hole.box);
  context.fillStyle = palette.plug;
  context.globalAlpha = 0.7;
  context.fill('evenodd');
  context.globalAlpha = 1;
  if (refused) hatch(pen, plug);
  context.strokeStyle = palette.ink;
  drawHoles(pen, plug);
  context.beginPath();
  traceBody(context, plug);
  context.strokeStyle = palette.panel;
  context.lineWidth = stroke(pen, 6);
  context.stroke();
  const overhang = fit.overhang.length > 0;
  context.strokeStyle = refused ? palette.danger : palette.accent;
  context.lineWidth = stroke(pen, 3.5);
  if (overhang && !refused) context.setLineDash([stroke(pen, 9), stroke(pen, 6)]);
  context.stroke();
  context.restore();
}

/** Slanting lines over the body, the pins left free. */
function hatch(pen: Pen, plug: PlugShape): void {
  const { context, palette } = pen;
  const { x, y, width, height } = plug.body;
  context.save();
  context.clip('evenodd');
  context.beginPath();
  const step = Math.max(0.4, 7 / pen.scale);
  for (let offset = -height; offset < width; offset += step) {
    context.moveTo(x + offset, y + height);
    context.lineTo(x + offset + height, y);
  }
  context.strokeStyle = palette.danger;
  context.lineWidth = stroke(pen, 1.5);
  context.stroke();
  context.restore();
}

/** The plug in the hand over nothing: only its outline, at the pointer. */
export function drawInHand(pen: Pen, body: Rect): void {
  const { context, palette } = pen;
  context.save();
  context.beginPath();
  context.roundRect(body.x, body.y, body.width, body.height, 0.3);
  context.fillStyle = palette.plug;
  context.globalAlpha = 0.5;
  context.fill();
  context.globalAlpha = 1;
  context.strokeStyle = palette.inkSoft;
  context.lineWidth = stroke(pen, 1.5);
  context.setLineDash([stroke(pen, 4), stroke(pen, 4)]);
  context.stroke();
  context.restore();
}
