import type { Point, Rect } from '../../../boards/drawing/geometry';
import { centreOf } from '../../../boards/drawing/geometry';
import type { Severity } from '../../../boards/findings/finding';
import { type Palette, severityColour } from './palette';
import { drawText, type Pen, stroke } from './pen';

function traceOctagon(context: CanvasRenderingContext2D, { x, y }: Point, radius: number): void {
  for (let corner = 0; corner < 8; corner += 1) {
    const angle = ((corner + 0.5) * Math.PI) / 4;
    const point = { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
    if (corner === 0) context.moveTo(point.x, point.y);
    else context.lineTo(point.x, point.y);
  }
  context.closePath();
}

function traceDiamond(context: CanvasRenderingContext2D, { x, y }: Point, radius: number): void {
  context.moveTo(x, y - radius);
  context.lineTo(x + radius, y);
  context.lineTo(x, y + radius);
  context.lineTo(x - radius, y);
  context.closePath();
}

/** The shapes by which severities are told apart even without colour. */
function traceShape(
  context: CanvasRenderingContext2D,
  severity: Severity,
  centre: Point,
  radius: number,
): void {
  if (severity === 'danger') traceOctagon(context, centre, radius);
  else if (severity === 'fault') traceDiamond(context, centre, radius);
  else {
    context.moveTo(centre.x + radius, centre.y);
    context.arc(centre.x, centre.y, radius, 0, 2 * Math.PI);
  }
}

/** Smaller signs would only be blurred by hatching. */
const LEAST_HATCHED_PX = 11;

/** Slanting lines in the octagon, on either side of its mark. */
function hatchOctagon({ context, palette }: Pen, centre: Point, radius: number): void {
  context.save();
  context.beginPath();
  traceOctagon(context, centre, radius);
  context.clip();
  context.beginPath();
  for (const offset of [-1.2, -0.85, 0.85, 1.2]) {
    context.moveTo(centre.x + offset * radius - radius, centre.y + radius);
    context.lineTo(centre.x + offset * radius + radius, centre.y - radius);
  }
  context.strokeStyle = palette.panel;
  context.globalAlpha = 0.7;
  context.lineWidth = radius * 0.1;
  context.stroke();
  context.restore();
}

/** A severity's sign: octagon with !, filled diamond, ring with ?, dot. */
export function drawSign(pen: Pen, severity: Severity, centre: Point, radius: number): void {
  const { context, palette } = pen;
  const colour = severityColour(palette, severity);
  context.beginPath();
  traceShape(context, severity, centre, severity === 'note' ? radius * 0.45 : radius);
  context.fillStyle = severity === 'doubt' ? palette.panel : colour;
  context.fill();
  if (severity === 'doubt') {
    context.strokeStyle = colour;
    context.lineWidth = radius * 0.22;
    context.stroke();
  }
  if (severity === 'danger' && radius * pen.scale >= LEAST_HATCHED_PX) hatchOctagon(pen, centre, radius);
  const letter = severity === 'danger' ? '!' : severity === 'doubt' ? '?' : '';
  if (letter === '') return;
  context.fillStyle = severity === 'danger' ? palette.panel : colour;
  drawText(pen, { text: letter, at: centre, sizeMm: radius * 1.35, face: 'strong' });
}

/** A ring round a pin in the severity's own shape, with a band of ground so that it stands off everything. */
export function drawPinRing(pen: Pen, severity: Severity, pin: Rect): void {
  const { context, palette } = pen;
  const half = pin.width / 2;
  const radius = severity === 'fault' ? half * 2.05 : half * 1.5;
  for (const [style, width] of ringStrokes(palette, severity)) {
    context.beginPath();
    traceShape(context, severity, centreOf(pin), radius);
    context.strokeStyle = style;
    context.lineWidth = stroke(pen, width, width * 0.035);
    context.stroke();
  }
}

function ringStrokes(palette: Palette, severity: Severity): readonly (readonly [string, number])[] {
  return [
    [palette.panel, 4.5],
    [severityColour(palette, severity), 2.25],
  ];
}
