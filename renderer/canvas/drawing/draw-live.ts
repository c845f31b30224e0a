import { samePlug } from '../../../boards/document/lookup';
import { centreOf, grown, overlap, type Rect, rectRound } from '../../../boards/drawing/geometry';
import type { Contact, Live } from '../canvas-props';
import type { Scene } from '../scene/scene';
import type { SleeveShape, WireShape } from '../scene/wiring';
import type { WorstMarks } from './draw-marks';
import { drawSleeve, drawWires } from './draw-wires';
import { wiresNeeded } from './far-labels';
import { drawText, isReadable, type Pen, stroke, traceRounded } from './pen';

/** Two patterns told apart without colour: long dashes where current goes, close ties where danger is. */
const LIVE_DASH = [0.7, 0.35];
const DANGER_DASH = [0.14, 0.24];
const BEND = 0.28;
/** How much of the dashes, both sides together, is left free next to the wire. */
const GAP = 0.9;
const WORD_MM = 0.42;
/** Clear of the outline of a chosen flag. */
const WORD_GAP_MM = 0.2;

/** Which wires end at the given contacts. Wires of a block plug stand for each other in its sleeve. */
interface Marked {
  readonly wires: readonly WireShape[];
  readonly sleeves: readonly SleeveShape[];
}

function marked(pen: Pen, scene: Scene, contacts: readonly Contact[]): Marked {
  const seen = ({ path }: WireShape | SleeveShape) => overlap(grown(rectRound(path), 0.5), pen.window);
  return {
    wires: scene.wires.filter(
      (wire) =>
        seen(wire) && contacts.some(({ plug, hole }) => hole === wire.hole && samePlug(plug, wire.plug)),
    ),
    sleeves: scene.sleeves.filter(
      (sleeve) => seen(sleeve) && contacts.some(({ plug }) => samePlug(plug, sleeve.plug)),
    ),
  };
}

/** Long dashes along the wires that the chosen current goes through, and dashed squares round its pins. */
export function drawLive(pen: Pen, scene: Scene, { contacts, pins }: Live): void {
  const { context, palette } = pen;
  if (wiresNeeded(pen.scale))
    drawPattern(pen, marked(pen, scene, contacts), palette.ink, LIVE_DASH, stroke(pen, 4, 0.13));
  for (const { connector, pins: own } of scene.blocks)
    for (const { pin, box } of own)
      if (pins.some((one) => one.connector === connector.id && one.pin === pin)) drawLivePin(pen, box);
  context.setLineDash([]);
}

/** Every contact that lies on a pin of a danger. */
export function dangerContacts(scene: Scene, { ofPin }: WorstMarks): readonly Contact[] {
  return scene.plugs.flatMap(({ ref, connector, holes }) =>
    holes
      .filter(
        ({ state, pin }) =>
          state === 'contact' && pin !== undefined && ofPin.get(`${connector} ${pin}`) === 'danger',
      )
      .map(({ hole }) => ({ plug: ref, hole })),
  );
}

/** Close ties across the wires on the pins of a danger. */
export function drawDangers(pen: Pen, scene: Scene, contacts: readonly Contact[]): void {
  if (!wiresNeeded(pen.scale) || contacts.length === 0) return;
  drawPattern(pen, marked(pen, scene, contacts), pen.palette.danger, DANGER_DASH, stroke(pen, 5, 0.17));
}

/** The word at the flags of those wires, where there is room for it. */
export function drawDangerWords(pen: Pen, scene: Scene, contacts: readonly Contact[]): void {
  if (!wiresNeeded(pen.scale) || !isReadable(pen, WORD_MM)) return;
  for (const { plug, box } of scene.flags) {
    const room = contacts.some((contact) => samePlug(contact.plug, plug)) && roomFor(scene, box);
    if (room && overlap(room, pen.window)) drawWord(pen, room);
  }
}

/** Above or below a flag, off every other flag, title, wire and connector; undefined where neither is free. */
function roomFor({ flags, titles, blocks, wires }: Scene, flag: Rect): Rect | undefined {
  const [width, height] = [WORD_MM * 4.3, WORD_MM * 1.15];
  const x = flag.x + flag.width - width;
  const taken = [
    ...flags.map(({ box }) => box).filter((box) => box !== flag),
    ...titles.map(({ box }) => box),
    ...blocks.map(({ shell }) => shell),
    ...wires.map(({ path }) => grown(rectRound(path), 0.2)),
  ];
  return [flag.y - height - WORD_GAP_MM, flag.y + flag.height + WORD_GAP_MM]
    .map((y): Rect => ({ x, y, width, height }))
    .find((room) => !taken.some((box) => overlap(box, room)));
}

/** A dashed band that stands out on both sides of the wires, and the wires over it as they were. */
function drawPattern(
  pen: Pen,
  { wires, sleeves }: Marked,
  style: string,
  dash: number[],
  beside: number,
): void {
  const { context, palette } = pen;
  context.lineCap = 'butt';
  for (const { path, width } of [...wires, ...sleeves]) {
    context.beginPath();
    traceRounded(context, path, BEND);
    context.setLineDash(dash);
    context.strokeStyle = style;
    context.lineWidth = width + 2 * beside;
    context.stroke();
    // A gap, so that dashes and wire of one colour stay apart.
    context.setLineDash([]);
    context.strokeStyle = palette.ground;
    context.lineWidth = width + GAP * beside;
    context.stroke();
  }
  for (const sleeve of sleeves) drawSleeve(pen, sleeve);
  drawWires(pen, wires);
}

function drawLivePin(pen: Pen, box: Rect): void {
  const { context, palette } = pen;
  const { x, y, width, height } = grown(box, box.width * 0.16);
  for (const [style, pixels, dash] of [
    [palette.panel, 5, []],
    [palette.ink, 2.5, [box.width / 3, box.width / 6]],
  ] as const) {
    context.setLineDash([...dash]);
    context.strokeStyle = style;
    context.lineWidth = stroke(pen, pixels, pixels * 0.03);
    context.strokeRect(x, y, width, height);
  }
}

function drawWord(pen: Pen, room: Rect): void {
  const { context, palette } = pen;
  context.beginPath();
  context.roundRect(room.x, room.y, room.width, room.height, 0.12);
  context.fillStyle = palette.danger;
  context.fill();
  context.fillStyle = palette.panel;
  drawText(pen, { text: 'Danger', at: centreOf(room), sizeMm: WORD_MM, face: 'strong' });
}
