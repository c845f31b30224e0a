import { overlap, rectAbout } from '../../../boards/drawing/geometry';
import type { HoleShape } from '../../../boards/drawing/holes';
import { drawText, isReadable, type Pen, stroke } from './pen';

/** A longer name would not stand inside its hole. */
const LONGEST_LABEL = 2;

/** Mounting holes: the ground seen through the board, a thin ring, and the letter where it can be read. */
export function drawHoles(pen: Pen, holes: readonly HoleShape[]): void {
  const { context, palette } = pen;
  for (const { centre, radius, label } of holes) {
    if (!overlap(rectAbout(centre, 2 * radius, 2 * radius), pen.window)) continue;
    context.beginPath();
    context.arc(centre.x, centre.y, radius, 0, 2 * Math.PI);
    context.fillStyle = palette.ground;
    context.fill();
    context.strokeStyle = palette.edge;
    context.lineWidth = stroke(pen, 1);
    context.stroke();
    if (label.length > LONGEST_LABEL || !isReadable(pen, radius)) continue;
    context.fillStyle = palette.inkSoft;
    drawText(pen, { text: label, at: centre, sizeMm: radius, face: 'text' });
  }
}
