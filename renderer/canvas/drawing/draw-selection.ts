import { type PinRef, type PlugRef, samePlug } from '../../../boards/document/lookup';
import { grown, type Rect } from '../../../boards/drawing/geometry';
import type { Selection, WireRef } from '../../store/session';
import type { Target } from '../canvas-props';
import type { Scene } from '../scene/scene';
import type { WireShape } from '../scene/wiring';
import { BEND, besidePath } from './draw-wires';
import { flagsNeeded, wiresNeeded } from './far-labels';
import { type Pen, stroke, traceRounded } from './pen';

/** An outline round what is selected: thick, with a band of ground, seen on every colour. */
export function drawSelection(pen: Pen, scene: Scene, selection: Selection): void {
  for (const rect of rectsOfSelection(scene, selection, pen.scale)) {
    outlineRect(pen, rect, pen.palette.panel, 5.5);
    outlineRect(pen, rect, pen.palette.select, 3);
  }
  if (selection.kind !== 'wire' || !wiresNeeded(pen.scale)) return;
  for (const wire of wiresOf(scene, selection)) {
    alongside(pen, wire, pen.palette.panel, 5.5);
    alongside(pen, wire, pen.palette.select, 3);
  }
}

/** A thin outline round what the pointer is over. */
export function drawHover(pen: Pen, scene: Scene, target: Target | null): void {
  if (!target) return;
  for (const rect of rectsOfTarget(scene, target, pen.scale)) outlineRect(pen, rect, pen.palette.accent, 1.5);
  if (target.kind !== 'wire' || !wiresNeeded(pen.scale)) return;
  for (const wire of wiresOf(scene, target)) alongside(pen, wire, pen.palette.accent, 1.5);
}

/** What is outlined of a selection. From afar flags, and then wires, are not drawn: the plugs stand for them. */
export function rectsOfSelection(scene: Scene, selection: Selection, scale: number): readonly Rect[] {
  switch (selection.kind) {
    case 'nothing':
    case 'on-tray':
      return [];
    case 'wire':
    case 'plug':
      return rectsOfTarget(scene, selection, scale);
    case 'connector':
      return selection.pin === undefined
        ? rectsOfTarget(scene, selection, scale)
        : rectsOfPin(scene, { connector: selection.connector, pin: selection.pin });
    case 'finding':
      return [
        ...selection.pins.flatMap((pin) => rectsOfPin(scene, pin)),
        ...rectsOfLeads(scene, selection.leads, scale),
      ];
  }
}

function rectsOfTarget(scene: Scene, target: Target, scale: number): readonly Rect[] {
  switch (target.kind) {
    case 'plug':
      return rectsOfPlug(scene, target.plug, scale);
    case 'wire':
      return wiresNeeded(scale) ? [] : rectsOfPlug(scene, target.plug, scale);
    case 'on-tray':
      return [];
    case 'connector':
      return scene.blocks
        .filter(({ connector }) => connector.id === target.connector)
        .map(({ shell }) => shell);
    case 'pin':
      return rectsOfPin(scene, target.pin);
  }
}

function rectsOfPin({ blocks }: Scene, ref: PinRef): readonly Rect[] {
  return blocks
    .filter(({ connector }) => connector.id === ref.connector)
    .flatMap(({ pins }) => pins.filter(({ pin }) => pin === ref.pin))
    .map(({ box }) => grown(box, box.width * 0.18));
}

function rectsOfLeads({ plugs, flags }: Scene, leads: readonly string[], scale: number): readonly Rect[] {
  return flagsNeeded(scale)
    ? flags.filter(({ plug }) => leads.includes(plug.lead)).map(({ box }) => box)
    : plugs.filter(({ ref }) => leads.includes(ref.lead)).map(({ body }) => body);
}

function rectsOfPlug({ plugs, flags }: Scene, ref: PlugRef, scale: number): readonly Rect[] {
  const bodies = plugs.filter((plug) => samePlug(plug.ref, ref)).map(({ body }) => body);
  if (!flagsNeeded(scale)) return bodies;
  return [
    ...bodies,
    ...flags.filter(({ plug, onBody }) => !onBody && samePlug(plug, ref)).map(({ box }) => box),
  ];
}

function wiresOf(scene: Scene, { plug: ref, wire: index }: WireRef): readonly WireShape[] {
  return scene.wires.filter(({ plug, wire }) => wire === index && samePlug(plug, ref));
}

/** A line on either side of a wire, all along it: its own colour stays to be seen. */
function alongside(pen: Pen, { path, width }: WireShape, style: string, pixels: number): void {
  const { context } = pen;
  const aside = width / 2 + stroke(pen, 2.5);
  context.strokeStyle = style;
  context.lineWidth = stroke(pen, pixels);
  for (const side of [aside, -aside]) {
    context.beginPath();
    traceRounded(context, besidePath(path, side), BEND);
    context.stroke();
  }
}

/** A rounded line a little outside a rectangle. */
export function outlineRect(pen: Pen, rect: Rect, style: string, pixels: number): void {
  const { context } = pen;
  const { x, y, width, height } = grown(rect, stroke(pen, 2.5));
  context.beginPath();
  context.roundRect(x, y, width, height, stroke(pen, 4));
  context.strokeStyle = style;
  context.lineWidth = stroke(pen, pixels);
  context.stroke();
}
