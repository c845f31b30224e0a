import { SIZES } from '../scene/sizes';
import type { SleeveShape, WireShape } from '../scene/wiring';
import { type Pen, stroke, traceRounded } from './pen';

const BEND = 0.28;

/** Wires in their own colours, each with an outline in ink so that white and black show on every ground. */
export function drawWires(pen: Pen, wires: readonly WireShape[]): void {
  const { context, palette } = pen;
  const outline = stroke(pen, 1, 0.035);
  context.lineCap = 'butt';
  context.lineJoin = 'round';
  context.beginPath();
  for (const wire of wires) traceRounded(context, wire.path, BEND);
  context.strokeStyle = palette.ink;
  context.lineWidth = SIZES.wire + 2 * outline;
  context.stroke();
  const byColour = new Map<string, WireShape[]>();
  for (const wire of wires) byColour.set(wire.colour, [...(byColour.get(wire.colour) ?? []), wire]);
  for (const same of byColour.values()) {
    const [first] = same;
    if (!first) continue;
    context.beginPath();
    for (const wire of same) traceRounded(context, wire.path, BEND);
    context.strokeStyle = palette.wires[first.colour];
    context.lineWidth = SIZES.wire;
    context.stroke();
  }
  context.setLineDash([0.35, 0.35]);
  for (const wire of wires) {
    if (!wire.stripe) continue;
    context.beginPath();
    traceRounded(context, wire.path, BEND);
    context.strokeStyle = palette.wires[wire.stripe];
    context.lineWidth = SIZES.wire * 0.55;
    context.stroke();
  }
  context.setLineDash([]);
}

/** The sleeve of a block plug: one band with its wires showing in it. */
export function drawSleeve(pen: Pen, sleeve: SleeveShape): void {
  const { context, palette } = pen;
  context.lineJoin = 'round';
  context.beginPath();
  traceRounded(context, sleeve.path, BEND * 1.5);
  context.strokeStyle = palette.ink;
  context.lineWidth = sleeve.width + 2 * stroke(pen, 1, 0.035);
  context.stroke();
  context.strokeStyle = palette.plug;
  context.lineWidth = sleeve.width;
  context.stroke();
}
