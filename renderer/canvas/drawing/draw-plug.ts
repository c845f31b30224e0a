import type { PlugShape } from '../../../boards/drawing/plug-shape';
import { type Pen, stroke, tracePath, traceRect } from './pen';

/** A seated plug: its body with the pins left free, contacts ringed, stops filled, the mark. */
export function drawPlug(pen: Pen, plug: PlugShape): void {
  const { context, palette } = pen;
  context.beginPath();
  tracePlug(context, plug);
  context.fillStyle = palette.plug;
  context.fill('evenodd');
  context.strokeStyle = palette.ink;
  context.lineWidth = stroke(pen, 1, 0.06);
  context.beginPath();
  traceBody(context, plug);
  context.stroke();
  drawHoles(pen, plug);
}

/** The body's outline, its corners a little rounded. */
export function traceBody(context: CanvasRenderingContext2D, { body }: PlugShape): void {
  context.roundRect(body.x, body.y, body.width, body.height, Math.min(0.3, body.width / 6));
}

/** The body without the pins that show through it: to be filled by the even-odd rule. */
export function tracePlug(context: CanvasRenderingContext2D, plug: PlugShape): void {
  traceBody(context, plug);
  for (const hole of plug.holes) if (hole.pin !== undefined) traceRect(context, hole.box);
}

/** Contacts, stops, empty positions past the edge, and the mark. */
export function drawHoles(pen: Pen, plug: PlugShape): void {
  const { context, palette } = pen;
  context.beginPath();
  for (const hole of plug.holes) if (hole.state === 'contact') traceRect(context, hole.box);
  context.lineWidth = stroke(pen, 0, 0.085);
  context.stroke();
  context.beginPath();
  for (const hole of plug.holes) if (hole.state === 'blocked') traceRect(context, hole.box);
  context.fillStyle = palette.ink;
  context.fill();
  context.beginPath();
  for (const hole of plug.holes)
    if (hole.state === 'empty' && hole.pin === undefined) traceRect(context, hole.box);
  context.lineWidth = stroke(pen, 1, 0.04);
  context.stroke();
  drawMark(pen, plug);
}

/** The moulded triangle at the marked hole. */
export function drawMark({ context, palette }: Pen, { mark }: PlugShape): void {
  if (!mark) return;
  context.beginPath();
  tracePath(context, mark, true);
  context.fillStyle = palette.ink;
  context.fill();
}
