import type { Mm } from '../../../boards/base/units';
import type { Point } from '../../../boards/drawing/geometry';
import type { SleeveShape, WireShape } from '../scene/wiring';
import { type Pen, stroke, tracePath, traceRounded } from './pen';

/** Radius at the corners of a drawn wire, in millimetres. */
export const BEND: Mm = 0.28;

/** Wires in their own colours, each with an outline in ink so that white and black show on every ground. */
export function drawWires(pen: Pen, wires: readonly WireShape[]): void {
  const { context, palette } = pen;
  const outline = stroke(pen, 0.4, 0.035);
  context.lineCap = 'butt';
  context.lineJoin = 'round';
  for (const wire of wires) {
    context.beginPath();
    traceRounded(context, wire.path, BEND);
    context.strokeStyle = palette.ink;
    context.lineWidth = wire.width + 2 * outline;
    context.stroke();
    context.strokeStyle = palette.wires[wire.colour];
    context.lineWidth = wire.width;
    context.stroke();
  }
  context.setLineDash([0.35, 0.35]);
  for (const wire of wires) {
    if (!wire.stripe) continue;
    context.beginPath();
    traceRounded(context, wire.path, BEND);
    context.strokeStyle = palette.wires[wire.stripe];
    context.lineWidth = wire.width * 0.55;
    context.stroke();
  }
  context.setLineDash([]);
}

/** The sleeve of a block plug: one band, its wires side by side in their colours. */
export function drawSleeve(pen: Pen, sleeve: SleeveShape): void {
  const { context, palette } = pen;
  const { path, width, colours } = sleeve;
  context.lineJoin = 'round';
  context.beginPath();
  traceRounded(context, path, BEND * 1.5);
  context.strokeStyle = palette.ink;
  context.lineWidth = width + 2 * stroke(pen, 0.4, 0.035);
  context.stroke();
  const each = width / colours.length;
  colours.forEach((colour, index) => {
    context.beginPath();
    tracePath(context, besidePath(path, (index + 0.5) * each - width / 2), false);
    context.strokeStyle = palette.wires[colour];
    context.lineWidth = each * 0.8;
    context.stroke();
  });
}

/** A path of upright legs, moved to its side by a distance. */
export function besidePath(path: readonly Point[], aside: Mm): readonly Point[] {
  return path.map((point, index) => {
    const into = normal(path[index - 1], point);
    const out = normal(point, path[index + 1]);
    const both = into && out ? { x: into.x + out.x, y: into.y + out.y } : (into ?? out);
    const straight = into && out && into.x === out.x && into.y === out.y;
    const share = straight ? aside / 2 : aside;
    return both ? { x: point.x + both.x * share, y: point.y + both.y * share } : point;
  });
}

/** The unit step to the right of a leg. */
function normal(from: Point | undefined, to: Point | undefined): Point | undefined {
  if (!from || !to) return undefined;
  return { x: -Math.sign(to.y - from.y), y: Math.sign(to.x - from.x) };
}
