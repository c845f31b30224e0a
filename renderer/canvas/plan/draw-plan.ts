import type { Mm } from '../../../boards/base/units';
import type { Block } from '../../../boards/drawing/block';
import { centreOf, grown, type Rect } from '../../../boards/drawing/geometry';
import { firstPin } from '../../../boards/fit/first-pin';
import { drawText, type Pen, stroke, traceRect } from '../drawing/pen';
import type { Guide } from './snap';

/** Where it came from: faint, in small dashes. */
export function drawLeftPlace(pen: Pen, shell: Rect): void {
  const { context, palette } = pen;
  context.beginPath();
  traceRect(context, grown(shell, stroke(pen, 1)));
  context.fillStyle = palette.mat;
  context.globalAlpha = 0.75;
  context.fill();
  context.globalAlpha = 1;
  dashed(pen, palette.edge, 1, 3);
}

/** Thin lines along which the connector on its way is level with others, a little longer than what they join. */
export function drawGuides(pen: Pen, guides: readonly Guide[]): void {
  const { context, palette } = pen;
  const beyond = 8 / pen.scale;
  context.beginPath();
  for (const { axis, atMm, fromMm, toMm } of guides) {
    const [from, to] = [fromMm - beyond, toMm + beyond];
    if (axis === 'x') {
      context.moveTo(atMm, from);
      context.lineTo(atMm, to);
    } else {
      context.moveTo(from, atMm);
      context.lineTo(to, atMm);
    }
  }
  context.strokeStyle = palette.accent;
  context.lineWidth = stroke(pen, 1);
  context.stroke();
}

/** How far pin 1 stands from the left and the top edge, as a drawing office writes it. */
export function drawDistances(pen: Pen, block: Block, middleMm: Mm): void {
  const { xMm: x, yMm: y } = firstPin(block.connector);
  const { context, palette } = pen;
  const sizeMm = 12 / pen.scale;
  context.beginPath();
  context.moveTo(0, y);
  context.lineTo(x, y);
  context.moveTo(x, 0);
  context.lineTo(x, y);
  dashed(pen, palette.inkSoft, 1, 2);
  distance(pen, { x: x / 2, y: y - sizeMm }, x, sizeMm);
  // On the side with more room.
  distance(pen, { x: x + (x > middleMm ? -2.6 : 2.6) * sizeMm, y: y / 2 }, y, sizeMm);
}

/** A number on a patch of the board, so that the grid does not run through it. */
function distance(
  pen: Pen,
  at: { readonly x: number; readonly y: number },
  mm: number,
  sizeMm: number,
): void {
  const { context, palette } = pen;
  const text = `${String(mm).replace('-', '−')} mm`;
  const box = grown({ ...at, width: 0, height: 0 }, (text.length * sizeMm) / 3.2, sizeMm * 0.65);
  context.beginPath();
  traceRect(context, box);
  context.fillStyle = palette.mat;
  context.fill();
  context.fillStyle = palette.ink;
  drawText(pen, { text, at: centreOf(box), sizeMm, face: 'text' });
}

/** A broken line round what the plan has a remark about; the words stand beside the plan. */
export function drawRemarked(pen: Pen, rects: readonly Rect[]): void {
  const { context, palette } = pen;
  context.beginPath();
  for (const rect of rects) traceRect(context, grown(rect, stroke(pen, 3)));
  dashed(pen, palette.doubt, 2, 5);
}

function dashed(pen: Pen, style: string, pixels: number, dashPx: number): void {
  const { context } = pen;
  context.setLineDash([stroke(pen, dashPx), stroke(pen, dashPx)]);
  context.strokeStyle = style;
  context.lineWidth = stroke(pen, pixels);
  context.stroke();
  context.setLineDash([]);
}
