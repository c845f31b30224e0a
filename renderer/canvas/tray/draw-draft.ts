import type { Tray } from '../../../boards/document/tray';
import type { Point, Rect } from '../../../boards/drawing/geometry';
import { rectAbout } from '../../../boards/drawing/geometry';
import type { TrayDraft } from '../../store/session';
import { outlineRect } from '../drawing/draw-selection';
import { type Pen, stroke, traceLine, traceRect } from '../drawing/pen';
import { drawGuides } from '../plan/draw-plan';
import type { Guide } from '../plan/snap';
import { rectOfPlace } from './drafted';
import { stationOf } from './gestures/draw-path';
import { HANDLES, handleAt } from './resize-handles';
import { guidesOnTray } from './snap-tray';
import type { TrayTarget } from './tray-hits';
import { LEAST_SIGN_PX } from './tray-labels';
import { boxOf, middleOf, type TrayScene } from './tray-scene';

/** What is on its way: what it is level with, and a line round it; of a path the line to what is pointed at. */
export function drawDraft(
  pen: Pen,
  scene: TrayScene,
  tray: Tray,
  draft: TrayDraft | null,
  pointed: TrayTarget | null,
): void {
  if (draft?.kind === 'path') {
    drawBegun(pen, scene, draft.from, stationOf(pointed));
    return;
  }
  if (draft?.kind !== 'place' && draft?.kind !== 'new') return;
  const { place } = draft;
  const rect = rectOfPlace(place);
  if (rect) drawGuides(pen, guidesOnTray(tray, place.place.id, rect).map(seenFrom(scene)));
  if (draft.kind !== 'new') return;
  const box = boxOf(scene, place.place.id);
  if (!box) return;
  outlineRect(pen, box, pen.palette.panel, 5.5);
  outlineRect(pen, box, pen.palette.select, 3);
}

/** A guide of the sheet as it is looked at. */
function seenFrom({ look: { side, widthMm } }: TrayScene): (guide: Guide) => Guide {
  return (guide) => {
    if (side === 'front') return guide;
    if (guide.axis === 'x') return { ...guide, atMm: widthMm - guide.atMm };
    return { ...guide, fromMm: widthMm - guide.toMm, toMm: widthMm - guide.fromMm };
  };
}

/** A path that has a beginning: marked there, with a dashed line to the place that would be its end. */
function drawBegun(pen: Pen, scene: TrayScene, from: string, to: string | null): void {
  const { context, palette } = pen;
  const start = middleOf(scene, from);
  if (!start) return;
  const end = to === null || to === from ? undefined : middleOf(scene, to);
  if (end) {
    context.beginPath();
    traceLine(context, [start, end]);
    context.setLineDash([stroke(pen, 6), stroke(pen, 4)]);
    context.strokeStyle = palette.select;
    context.lineWidth = stroke(pen, 3);
    context.stroke();
    context.setLineDash([]);
  }
  for (const at of end ? [start, end] : [start]) drawMark(pen, at);
}

/** A ring about a place that is meant. */
export function drawMark(pen: Pen, at: Point): void {
  const side = (2.6 * LEAST_SIGN_PX) / pen.scale;
  outlineRect(pen, rectAbout(at, side, side), pen.palette.panel, 5.5);
  outlineRect(pen, rectAbout(at, side, side), pen.palette.select, 3);
}

/** Small squares by which an area is made larger. */
export function drawHandles(pen: Pen, rect: Rect): void {
  const { context, palette } = pen;
  const side = stroke(pen, 7);
  context.beginPath();
  for (const handle of HANDLES) traceRect(context, rectAbout(handleAt(rect, handle), side, side));
  context.fillStyle = palette.panel;
  context.fill();
  context.strokeStyle = palette.select;
  context.lineWidth = stroke(pen, 1.5);
  context.stroke();
}
