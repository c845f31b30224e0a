import type { Scene } from '../scene/scene';
import { drawHoles } from './draw-holes';
import { type Pen, stroke, traceRect } from './pen';

const GRID_MM = 10;
/** Nearer together than this, grid lines would be a grey veil. */
const LEAST_GRID_PX = 14;

/** The board's edge, a light grid of centimetres, and the mounting holes. */
export function drawGround(pen: Pen, { outline, holes }: Pick<Scene, 'outline' | 'holes'>): void {
  const { context, palette, scale } = pen;
  context.beginPath();
  traceRect(context, outline);
  context.fillStyle = palette.mat;
  context.fill();
  // In forced colours a line has the colour of text, and a grid would be as loud.
  if (GRID_MM * scale >= LEAST_GRID_PX && palette.line !== palette.ink) {
    context.beginPath();
    const right = outline.x + outline.width;
    const bottom = outline.y + outline.height;
    for (let x = Math.ceil(outline.x / GRID_MM) * GRID_MM; x < right; x += GRID_MM) {
      context.moveTo(x, outline.y);
      context.lineTo(x, bottom);
    }
    for (let y = Math.ceil(outline.y / GRID_MM) * GRID_MM; y < bottom; y += GRID_MM) {
      context.moveTo(outline.x, y);
      context.lineTo(right, y);
    }
    context.strokeStyle = palette.line;
    context.globalAlpha = 0.45;
    context.lineWidth = stroke(pen, 1);
    context.stroke();
    context.globalAlpha = 1;
  }
  context.beginPath();
  traceRect(context, outline);
  context.strokeStyle = palette.edge;
  context.lineWidth = stroke(pen, 1.25);
  context.stroke();
  drawHoles(pen, holes);
}
