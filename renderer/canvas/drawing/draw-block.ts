import type { Block, PinShape } from '../../../boards/drawing/block';
import { centreOf } from '../../../boards/drawing/geometry';
import type { NameShape } from '../../../boards/drawing/names';
import { farLabelsNeeded } from './far-labels';
import { drawText, isReadable, lineMiddles, type Pen, stroke, traceLine, tracePath, traceRect } from './pen';

/** Below this many pixels a pin is only a spot. */
const LEAST_OUTLINED_PIN_PX = 7;

/** A connector: shell with its cut corner, walls, pins with their numbers, names with leader lines. */
export function drawBlock(pen: Pen, block: Block): void {
  drawShell(pen, block);
  drawPins(pen, block.pins);
  drawNumbers(pen, block.pins);
  drawNames(pen, block);
}

function drawShell(pen: Pen, block: Block): void {
  const { context, palette } = pen;
  context.beginPath();
  tracePath(context, block.outline, true);
  context.fillStyle = palette.shell;
  context.fill();
  context.strokeStyle = palette.edge;
  context.lineWidth = stroke(pen, 1, 0.045);
  context.stroke();
  drawPinOne(pen, block);
  if (block.walls.length === 0) return;
  context.strokeStyle = palette.edge;
  context.lineWidth = stroke(pen, 1, 0.045);
  context.beginPath();
  for (const wall of block.walls) traceLine(context, wall);
  context.stroke();
}

/** The cut corner, in ink. Drawn once more over the plugs, for they would hide it. */
export function drawPinOne({ context, palette }: Pen, { pinOne }: Block): void {
  context.beginPath();
  tracePath(context, pinOne, true);
  context.fillStyle = palette.ink;
  context.fill();
}

function drawPins(pen: Pen, pins: readonly PinShape[]): void {
  const { context, palette, scale } = pen;
  const [first] = pins;
  const spots = !first || first.box.width * scale < LEAST_OUTLINED_PIN_PX;
  context.beginPath();
  for (const pin of pins) if (!pin.missing && (spots || !pin.unsure)) traceRect(context, pin.box);
  context.fillStyle = palette.pin;
  context.fill();
  if (spots) return;
  // A pin that nobody is sure of is hollow: an outline alone.
  for (const pin of pins) if (!pin.missing && pin.unsure) traceRect(context, pin.box);
  context.strokeStyle = palette.ink;
  context.lineWidth = stroke(pen, 1, 0.04);
  context.stroke();
  context.beginPath();
  for (const { box, missing } of pins) {
    if (!missing) continue;
    traceRect(context, box);
    context.moveTo(box.x, box.y + box.height);
    context.lineTo(box.x + box.width, box.y);
  }
  context.strokeStyle = palette.inkSoft;
  const dash = first.box.width / 7;
  context.setLineDash([dash, dash]);
  context.stroke();
  context.setLineDash([]);
}

function drawNumbers(pen: Pen, pins: readonly PinShape[]): void {
  const { context, palette } = pen;
  for (const pin of pins) {
    if (pin.missing || !isReadable(pen, pin.numberMm)) continue;
    context.fillStyle = pin.unsure ? palette.ink : palette.pinInk;
    drawText(pen, { text: pin.pin, at: centreOf(pin.box), sizeMm: pin.numberMm, face: 'mono' });
  }
}

function drawNames(pen: Pen, { names, leaders, pins }: Block): void {
  const { context, palette } = pen;
  // From afar the connectors' own prints stand there in type of a fixed size.
  if (farLabelsNeeded(pen.scale, palette.typePx)) return;
  if (!names.some((name) => isReadable(pen, name.sizeMm))) return;
  context.beginPath();
  for (const leader of leaders) traceLine(context, leader);
  context.strokeStyle = palette.edge;
  context.lineWidth = stroke(pen, 0.75, 0.025);
  context.stroke();
  const missing = new Set(pins.filter((pin) => pin.missing).map((pin) => pin.pin));
  for (const name of names) {
    context.fillStyle = missing.has(name.pin) ? palette.inkSoft : palette.ink;
    drawName(pen, name);
  }
}

function drawName(pen: Pen, name: NameShape): void {
  const { box, align, upright, sizeMm } = name;
  if (upright) {
    const y = align === 'start' ? box.y + box.height : box.y;
    lineMiddles(name.lines.length, box.x, sizeMm).forEach((x, index) => {
      const text = name.lines[index] ?? '';
      drawText(pen, { text, at: { x, y }, sizeMm, face: 'text', align, upright });
    });
    return;
  }
  const x = align === 'start' ? box.x : align === 'end' ? box.x + box.width : box.x + box.width / 2;
  lineMiddles(name.lines.length, box.y, sizeMm).forEach((y, index) => {
    const text = name.lines[index] ?? '';
    drawText(pen, { text, at: { x, y }, sizeMm, face: 'text', align });
  });
}
