import { centreOf, contains, grown, overlap, type Rect } from '../../../boards/drawing/geometry';
import { drawGround } from '../drawing/draw-ground';
import { drawHoles } from '../drawing/draw-holes';
import { drawText, type Pen, stroke, traceLine, traceRect } from '../drawing/pen';
import type { BoardShape } from './board-shape';
import { drawCables } from './draw-cables';
import { drawArea, drawDraught, drawFan, drawnFar, drawOpening, drawPoint, drawStandoff } from './draw-signs';
import type { PathShape } from './path-shapes';
import { labelsOnTheWay, type TrayLabel, trayLabelsOf } from './tray-labels';
import type { TrayScene } from './tray-scene';

/** The whole map but names: the metal, the board, what is on the other side, then what is on this one. */
export function drawTray(pen: Pen, scene: TrayScene): void {
  const { sheet, board, bays, supply, openings, paths, cables, points, standoffs, fans } = scene;
  const seen = (box: Rect) => overlap(grown(box, 10), pen.window);
  drawGround(pen, { outline: sheet, holes: [] });
  if (board !== null) drawBoard(pen, board);
  const areas = [...bays.map((bay) => [bay, false] as const), ...(supply ? [[supply, true] as const] : [])];
  for (const [area, heavy] of areas) if (seen(area.box)) drawArea(pen, area, heavy);
  for (const opening of openings) if (seen(opening.box)) drawOpening(pen, opening);
  drawPaths(pen, paths, false);
  drawCables(pen, cables, false);
  if (board !== null) drawStanding(pen, board);
  drawPaths(pen, paths, true);
  drawCables(pen, cables, true);
  for (const standoff of standoffs) drawStandoff(pen, standoff);
  for (const point of points) drawPoint(pen, point);
  for (const fan of fans) {
    if (!seen(fan.box)) continue;
    drawFan(pen, fan);
    drawDraught(pen, fan);
  }
}

/**
 * The names, each on a patch of what it stands on, so that no path runs through it.
 *
 * @param resting the map without what is on its way; the same one where nothing is
 */
export function drawNames(pen: Pen, scene: TrayScene, resting: TrayScene): void {
  const { context, palette, scale } = pen;
  const labels =
    scene === resting
      ? trayLabelsOf(scene, scale, palette.typePx)
      : labelsOnTheWay(resting, scene, scale, palette.typePx);
  for (const label of labels) {
    if (!overlap(label.box, pen.window)) continue;
    drawPatch(pen, scene, label);
    context.fillStyle = label.near ? palette.ink : palette.inkSoft;
    const { text, box, sizeMm, upright } = label;
    drawText(pen, { text, at: centreOf(box), sizeMm, face: 'text', upright });
  }
}

function drawPatch(pen: Pen, { sheet, board, bays, supply }: TrayScene, { box }: TrayLabel): void {
  const { context, palette } = pen;
  const at = centreOf(box);
  const areas = [...bays, ...(supply === null ? [] : [supply])];
  if (!contains(sheet, at) || areas.some((area) => contains(area.box, at))) return;
  context.beginPath();
  traceRect(context, box);
  context.fillStyle = board?.near && contains(board.outline, at) ? palette.panel : palette.mat;
  context.globalAlpha = 0.85;
  context.fill();
  context.globalAlpha = 1;
}

/** The board's face and edge; the side with the sockets for the rear panel by a thick line. */
function drawBoard(pen: Pen, { outline, near, rear }: BoardShape): void {
  const { context, palette } = pen;
  drawnFar(pen, near, () => {
    context.beginPath();
    traceRect(context, outline);
    if (near) {
      context.fillStyle = palette.panel;
      context.fill();
    }
    context.strokeStyle = palette.edge;
    context.lineWidth = stroke(pen, 1.5);
    context.stroke();
    context.beginPath();
    traceLine(context, rear);
    context.lineWidth = stroke(pen, 4);
    context.stroke();
  });
}

/** What stands on the board, seen from the front; from behind only its holes, through the metal. */
function drawStanding(pen: Pen, { near, holes, connectors }: BoardShape): void {
  const { context, palette } = pen;
  if (!near) return;
  drawHoles(pen, holes);
  context.beginPath();
  for (const { box } of connectors) traceRect(context, box);
  context.fillStyle = palette.shell;
  context.fill();
  context.strokeStyle = palette.inkSoft;
  context.lineWidth = stroke(pen, 1);
  context.stroke();
}

function drawPaths(pen: Pen, paths: readonly PathShape[], near: boolean): void {
  const { context, palette } = pen;
  drawnFar(pen, near, () => {
    context.beginPath();
    for (const path of paths)
      if (path.near === near && overlap(grown(path.box, 1), pen.window)) traceLine(context, path.line);
    context.strokeStyle = palette.accent;
    context.lineWidth = stroke(pen, near ? 2 : 1.5);
    context.stroke();
  });
}
