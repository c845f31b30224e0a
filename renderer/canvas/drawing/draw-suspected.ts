import { samePlug } from '../../../boards/document/lookup';
import { centreOf } from '../../../boards/drawing/geometry';
import type { PlugShape } from '../../../boards/drawing/plug-shape';
import type { Suspected } from '../canvas-props';
import type { Ghost } from '../in-hand';
import type { Scene } from '../scene/scene';
import { drawArrow } from './draw-planned';
import { drawHoles, traceBody, tracePlug } from './draw-plug';
import { type Pen, stroke } from './pen';

/**
 * Plugs where they may sit, dashed, with an arrow from where they are written down; the place of one that may be
 * off.
 */
export function drawSuspected(
  pen: Pen,
  { plugs }: Scene,
  ghosts: readonly Ghost[],
  off: Suspected['off'],
): void {
  for (const { shape } of ghosts) drawDashed(pen, shape, 'may sit here');
  for (const { shape } of ghosts) {
    const now = plugs.find(({ ref }) => samePlug(ref, shape.ref));
    if (now) drawArrow(pen, centreOf(now.body), centreOf(shape.body), pen.palette.fault);
  }
  for (const plug of plugs)
    if (off.some((ref) => samePlug(ref, plug.ref))) drawDashed(pen, plug, 'may be empty');
}

/** The dashes lie on a band of ground, so that they are seen over a plug that sits there too; the pins stay free. */
function drawDashed(pen: Pen, plug: PlugShape, meaning: 'may sit here' | 'may be empty'): void {
  const { context, palette } = pen;
  context.save();
  context.beginPath();
  tracePlug(context, plug);
  context.fillStyle = meaning === 'may be empty' ? palette.ground : palette.plug;
  context.globalAlpha = 0.7;
  context.fill('evenodd');
  context.globalAlpha = 1;
  context.strokeStyle = palette.ink;
  if (meaning === 'may sit here') drawHoles(pen, plug);
  context.beginPath();
  traceBody(context, plug);
  context.strokeStyle = palette.panel;
  context.lineWidth = stroke(pen, 6);
  context.stroke();
  context.strokeStyle = palette.fault;
  context.lineWidth = stroke(pen, 3.5);
  context.setLineDash([stroke(pen, 8), stroke(pen, 5)]);
  context.stroke();
  context.restore();
}
