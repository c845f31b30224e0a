import { SIZES } from '../../../boards/drawing/sizes';
import type { TitleShape } from '../scene/titles';
import type { FlagShape } from '../scene/wiring';
import { drawText, isReadable, type Pen, stroke, traceRect } from './pen';

/** A flag: the lead's print in the mono face. With a sign it stands beside it, otherwise in the middle. */
export function drawFlag(pen: Pen, flag: FlagShape, signed: boolean): void {
  if (!isReadable(pen, flag.textMm)) return;
  const { context, palette } = pen;
  const { box } = flag;
  if (!flag.onBody) {
    context.beginPath();
    if (flag.bar) traceRect(context, flag.bar);
    context.roundRect(box.x, box.y, box.width, box.height, 0.18);
    context.fillStyle = palette.panel;
    context.fill();
    context.strokeStyle = palette.edge;
    context.lineWidth = stroke(pen, 1, 0.04);
    context.stroke();
  }
  context.fillStyle = palette.ink;
  const shift = signed && !flag.onBody ? SIZES.flagSign / 2 : 0;
  drawText(pen, {
    text: flag.text,
    at: { x: box.x + box.width / 2 + shift, y: box.y + box.height / 2 },
    sizeMm: flag.textMm,
    face: 'mono',
  });
}

/** The connector's print, and what it is in words under it. */
export function drawTitle(pen: Pen, { box, print, title }: TitleShape): void {
  const { context, palette } = pen;
  context.fillStyle = palette.ink;
  const first = box.y + (SIZES.title * 1.15) / 2;
  if (isReadable(pen, SIZES.title))
    drawText(pen, {
      text: print,
      at: { x: box.x, y: first },
      sizeMm: SIZES.title,
      face: 'strong',
      align: 'left',
    });
  if (title === undefined || !isReadable(pen, SIZES.subtitle)) return;
  context.fillStyle = palette.inkSoft;
  const second = box.y + SIZES.title * 1.15 + (SIZES.subtitle * 1.25) / 2;
  drawText(pen, {
    text: title,
    at: { x: box.x, y: second },
    sizeMm: SIZES.subtitle,
    face: 'text',
    align: 'left',
  });
}
