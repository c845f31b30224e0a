import { type PlugRef, samePlug } from '../../../boards/document/lookup';
import { grown, overlap, type Rect, rectRound } from '../../../boards/drawing/geometry';
import type { Scene } from '../scene/scene';
import { drawBlock, drawPinOne } from './draw-block';
import { drawFlag, drawTitle } from './draw-flags';
import type { WorstMarks } from './draw-marks';
import { drawPlug } from './draw-plug';
import { drawSleeve, drawWires } from './draw-wires';
import { drawFarLabels, farLabelsNeeded, farLabelsOf, flagsNeeded, wiresNeeded } from './far-labels';
import type { Pen } from './pen';

/** All connectors that can be seen. */
export function drawConnectors(pen: Pen, scene: Scene): void {
  for (const block of scene.blocks) if (overlap(block.bounds, pen.window)) drawBlock(pen, block);
}

/** Plugs, wires, flags and titles that can be seen; the plug in the hand only faintly, where it came from. */
export function drawWiring(pen: Pen, scene: Scene, marks: WorstMarks, inHand: PlugRef | null): void {
  if (inHand) {
    pen.context.globalAlpha = 0.3;
    drawPlugs(pen, scene, marks, (plug) => samePlug(plug, inHand));
    pen.context.globalAlpha = 1;
  }
  drawPlugs(pen, scene, marks, (plug) => !inHand || !samePlug(plug, inHand));
  const { scale, palette } = pen;
  if (farLabelsNeeded(scale, palette.typePx)) drawFarLabels(pen, farLabelsOf(scene, scale, palette.typePx));
  else for (const title of scene.titles) if (overlap(title.box, pen.window)) drawTitle(pen, title);
}

function drawPlugs(pen: Pen, scene: Scene, marks: WorstMarks, belongs: (plug: PlugRef) => boolean): void {
  const seen = (rect: Rect) => overlap(grown(rect, 0.5), pen.window);
  for (const plug of scene.plugs) if (belongs(plug.ref) && seen(plug.body)) drawPlug(pen, plug);
  for (const block of scene.blocks) if (seen(block.shell)) drawPinOne(pen, block);
  if (!wiresNeeded(pen.scale)) return;
  for (const sleeve of scene.sleeves)
    if (belongs(sleeve.plug) && seen(rectRound(sleeve.path))) drawSleeve(pen, sleeve);
  drawWires(
    pen,
    scene.wires.filter((wire) => belongs(wire.plug) && seen(rectRound(wire.path))),
  );
  if (!flagsNeeded(pen.scale)) return;
  for (const flag of scene.flags)
    if (belongs(flag.plug) && seen(flag.box)) drawFlag(pen, flag, marks.ofLead.has(flag.plug.lead));
}
