import type { Mm } from '../../../boards/base/units';
import { grown, type Point, type Rect } from '../../../boards/drawing/geometry';
import { type Pen, stroke, traceRect } from '../drawing/pen';
import type { FanShape } from './fan-shapes';
import { LEAST_SIGN_PX } from './tray-labels';
import {
  type AreaShape,
  type OpeningShape,
  POINT_RADIUS,
  type PointShape,
  STANDOFF_RADIUS,
  type StandoffShape,
} from './tray-scene';

/** Of what is on the side that is not looked at. */
const FAR_ALPHA = 0.55;
const FAR_DASH_PX = [4, 3] as const;

/** Draws something of the other side: fainter, and its lines dashed. */
export function drawnFar(pen: Pen, near: boolean, draw: () => void): void {
  const { context } = pen;
  if (near) {
    draw();
    return;
  }
  context.globalAlpha = FAR_ALPHA;
  context.setLineDash(FAR_DASH_PX.map((pixels) => stroke(pen, pixels)));
  draw();
  context.setLineDash([]);
  context.globalAlpha = 1;
}

/** A place for a drive, or the supply unit by a heavier line. */
export function drawArea(pen: Pen, { box, near }: AreaShape, heavy: boolean): void {
  const { context, palette } = pen;
  drawnFar(pen, near, () => {
    context.beginPath();
    context.roundRect(box.x, box.y, box.width, box.height, 2);
    context.fillStyle = palette.plug;
    context.globalAlpha *= 0.6;
    context.fill();
    context.globalAlpha = near ? 1 : FAR_ALPHA;
    context.strokeStyle = palette.edge;
    context.lineWidth = stroke(pen, heavy ? 2.5 : 1.25);
    context.stroke();
  });
}

/**
 * A hole in the metal, with what a cable lies on told by its line: a thick one is a rubber grommet, a double
 * one metal bent round, a thin one the bare cut.
 */
export function drawOpening(pen: Pen, { box, round, edge }: OpeningShape): void {
  const { context, palette } = pen;
  context.beginPath();
  traceOpening(context, box, round);
  context.fillStyle = palette.ground;
  context.fill();
  context.strokeStyle = palette.ink;
  context.lineWidth = stroke(pen, edge === 'grommet' ? 4 : 1.25);
  context.stroke();
  if (edge !== 'rolled') return;
  const inner = grown(box, -Math.min(stroke(pen, 4), box.width / 4, box.height / 4));
  context.beginPath();
  traceOpening(context, inner, round);
  context.stroke();
}

function traceOpening(context: CanvasRenderingContext2D, box: Rect, round: boolean): void {
  const { x, y, width, height } = box;
  if (round) context.ellipse(x + width / 2, y + height / 2, width / 2, height / 2, 0, 0, 2 * Math.PI);
  else context.roundRect(x, y, width, height, Math.min(3, width / 3, height / 3));
}

/** A tie point is a ring with a strap through it, a bend a diamond, the end of a cable a square. */
export function drawPoint(pen: Pen, { kind, at, near }: PointShape): void {
  const { context, palette } = pen;
  const radius = signRadius(pen, POINT_RADIUS * 0.8);
  drawnFar(pen, near, () => {
    context.beginPath();
    if (kind === 'tie') context.arc(at.x, at.y, radius, 0, 2 * Math.PI);
    else if (kind === 'bend') traceDiamond(context, at, radius * 1.15);
    else traceRect(context, squareAbout(at, radius * 0.9));
    context.fillStyle = palette.panel;
    context.fill();
    context.strokeStyle = palette.ink;
    context.lineWidth = stroke(pen, 1.5);
    context.stroke();
    context.setLineDash([]);
    context.beginPath();
    if (kind === 'tie') {
      context.moveTo(at.x - radius * 1.5, at.y);
      context.lineTo(at.x + radius * 1.5, at.y);
      context.lineWidth = stroke(pen, 2.5);
      context.stroke();
    } else if (kind === 'end') {
      traceRect(context, squareAbout(at, radius * 0.4));
      context.fillStyle = palette.ink;
      context.fill();
    }
  });
}

/** A six-sided head: filled where it cannot be taken out. */
export function drawStandoff(pen: Pen, { at, fixed, near }: StandoffShape): void {
  const { context, palette } = pen;
  const radius = signRadius(pen, STANDOFF_RADIUS);
  drawnFar(pen, near, () => {
    context.beginPath();
    for (let corner = 0; corner < 6; corner++) {
      const angle = (corner * Math.PI) / 3;
      context.lineTo(at.x + radius * Math.cos(angle), at.y + radius * Math.sin(angle));
    }
    context.closePath();
    context.fillStyle = fixed ? palette.inkSoft : palette.panel;
    context.fill();
    context.strokeStyle = palette.inkSoft;
    context.lineWidth = stroke(pen, 1.25);
    context.stroke();
  });
}

/** A fan from its edge, and an arrow for which way it blows. */
export function drawFan(pen: Pen, { box, blows }: FanShape): void {
  const { context, palette } = pen;
  context.beginPath();
  context.roundRect(box.x, box.y, box.width, box.height, 2);
  context.fillStyle = palette.panel;
  context.fill();
  context.strokeStyle = palette.edge;
  context.lineWidth = stroke(pen, 1.25);
  if (blows === null) context.setLineDash([stroke(pen, 3), stroke(pen, 3)]);
  context.stroke();
  context.setLineDash([]);
}

/** Arrows at both ends of a fan, so that its name has the middle. */
export function drawDraught(pen: Pen, { box, blows }: FanShape): void {
  if (blows === null) return;
  const [from, to] = blows;
  const along = box.width > box.height;
  const away = (along ? box.width : box.height) / 2 - stroke(pen, 8);
  for (const by of [-away, away]) {
    const moved = ({ x, y }: Point): Point => (along ? { x: x + by, y } : { x, y: y + by });
    drawArrow(pen, moved(from), moved(to));
  }
}

function drawArrow(pen: Pen, from: Point, to: Point): void {
  const { context, palette } = pen;
  const head = stroke(pen, 5);
  const angle = Math.atan2(to.y - from.y, to.x - from.x);
  context.beginPath();
  context.moveTo(from.x, from.y);
  context.lineTo(to.x, to.y);
  for (const side of [-1, 1]) {
    context.moveTo(to.x, to.y);
    const turned = angle + side * 0.6;
    context.lineTo(to.x - head * Math.cos(turned), to.y - head * Math.sin(turned));
  }
  context.strokeStyle = palette.accent;
  context.lineWidth = stroke(pen, 2);
  context.stroke();
}

function signRadius(pen: Pen, radius: Mm): Mm {
  return Math.max(radius, LEAST_SIGN_PX / pen.scale);
}

function squareAbout({ x, y }: Point, half: Mm): Rect {
  return { x: x - half, y: y - half, width: 2 * half, height: 2 * half };
}

function traceDiamond(context: CanvasRenderingContext2D, { x, y }: Point, radius: Mm): void {
  context.moveTo(x, y - radius);
  context.lineTo(x + radius, y);
  context.lineTo(x, y + radius);
  context.lineTo(x - radius, y);
  context.closePath();
}
