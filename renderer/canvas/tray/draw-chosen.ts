import { grown, type Rect } from '../../../boards/drawing/geometry';
import type { TrayPart } from '../../store/session';
import { outlineRect } from '../drawing/draw-selection';
import { type Pen, stroke, traceLine } from '../drawing/pen';
import { liesAlong } from './cable-shapes';
import type { PathShape } from './path-shapes';
import type { TrayTarget } from './tray-hits';
import { LEAST_SIGN_PX } from './tray-labels';
import { boxOf, type TrayScene } from './tray-scene';

/** A band along a path that is chosen. */
export function drawChosenPath(pen: Pen, scene: TrayScene, part: TrayPart): void {
  const path = pathOf(scene, part);
  if (!path) return;
  drawBand(pen, path, pen.palette.panel, 9);
  drawBand(pen, path, pen.palette.select, 5);
}

/** An outline round a place or the board that is chosen, seen on every colour. */
export function drawChosen(pen: Pen, scene: TrayScene, part: TrayPart): void {
  if (part.kind === 'path') return;
  const rect = rectOf(pen, scene, { kind: 'on-tray', part });
  if (!rect) return;
  outlineRect(pen, rect, pen.palette.panel, 5.5);
  outlineRect(pen, rect, pen.palette.select, 3);
}

/** A thin outline round what the pointer is over. */
export function drawPointed(pen: Pen, scene: TrayScene, target: TrayTarget): void {
  const path = target.kind === 'on-tray' ? pathOf(scene, target.part) : undefined;
  if (path) {
    drawBand(pen, path, pen.palette.accent, 4);
    return;
  }
  if (target.kind === 'plug') {
    for (const stretch of scene.cables)
      if (liesAlong(stretch, target.plug)) drawBand(pen, stretch, pen.palette.accent, 2);
    return;
  }
  const rect = rectOf(pen, scene, target);
  if (rect) outlineRect(pen, rect, pen.palette.accent, 1.5);
}

/** Round a connector that is chosen, where the board is seen. */
export function drawChosenConnector(pen: Pen, scene: TrayScene, connector: string): void {
  const rect = rectOf(pen, scene, { kind: 'connector', connector });
  if (!rect) return;
  outlineRect(pen, rect, pen.palette.panel, 5.5);
  outlineRect(pen, rect, pen.palette.select, 3);
}

function pathOf({ paths }: TrayScene, { kind, id }: TrayPart): PathShape | undefined {
  return kind === 'path' ? paths.find((each) => each.id === id) : undefined;
}

/** Never smaller than the sign that is drawn for it. */
function rectOf(pen: Pen, scene: TrayScene, target: Exclude<TrayTarget, { kind: 'plug' }>): Rect | undefined {
  if (target.kind === 'connector')
    return scene.board?.connectors.find(({ connector }) => connector === target.connector)?.box;
  if (target.part.kind === 'board') return scene.board?.outline;
  const box = boxOf(scene, target.part.id);
  if (!box) return undefined;
  const least = (2 * LEAST_SIGN_PX) / pen.scale;
  return grown(box, Math.max(0, (least - box.width) / 2), Math.max(0, (least - box.height) / 2));
}

function drawBand(pen: Pen, { line }: Pick<PathShape, 'line'>, style: string, pixels: number): void {
  const { context } = pen;
  context.beginPath();
  traceLine(context, line);
  context.lineCap = 'round';
  context.strokeStyle = style;
  context.lineWidth = stroke(pen, pixels);
  context.stroke();
  context.lineCap = 'butt';
}
