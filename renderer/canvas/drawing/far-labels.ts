import { centreOf, grown, legsOf, type Rect, rectAbout } from '../../../boards/drawing/geometry';
import { measureByTable } from '../../../boards/drawing/measure';
import { SIZES } from '../../../boards/drawing/sizes';
import { type RectBuckets, rectBuckets, USUAL_BUCKET } from '../scene/rect-buckets';
import type { Scene } from '../scene/scene';
import { drawText, isReadable, type Pen } from './pen';

/** Of the page's base type size. */
const LABEL_SHARE = 0.87;
const LONGEST = 24;
/** Of the size of the type. */
const NAMES_APART = 0.4;
/** As far as a severity sign may stand out over its flag. */
const SIGN_PX = 4;

/** From afar titles are too small to read: connectors carry their print in type of a fixed size on the screen. */
export function farLabelsNeeded(scale: number, typePx: number): boolean {
  return SIZES.title * scale < LABEL_SHARE * typePx * 0.75;
}

/** A flag whose print cannot be read is an empty box. */
export function flagsNeeded(scale: number): boolean {
  return isReadable({ scale }, SIZES.flagText);
}

/** From still further away wires are only a smudge round the connectors. */
export function wiresNeeded(scale: number): boolean {
  return scale >= 6;
}

export interface FarLabel {
  readonly text: string;
  readonly box: Rect;
  readonly sizeMm: number;
}

interface Remembered {
  readonly scale: number;
  readonly typePx: number;
  readonly labels: readonly FarLabel[];
}
const remembered = new WeakMap<Scene, Remembered>();

/** The labels of a scene at a scale; panning asks for the same ones again and again. */
export function farLabelsOf(scene: Scene, scale: number, typePx: number): readonly FarLabel[] {
  const known = remembered.get(scene);
  if (known?.scale === scale && known.typePx === typePx) return known.labels;
  const labels = farLabels(scene, scale, typePx);
  remembered.set(scene, { scale, typePx, labels });
  return labels;
}

/**
 * Labels above, below or beside each connector, wherever nothing stands yet; over a mounting hole only where there
 * is no other place, and left out where all is taken.
 */
export function farLabels(
  { blocks, holes, plugs, flags, wires, sleeves }: Scene,
  scale: number,
  typePx: number,
): readonly FarLabel[] {
  const sizeMm = (LABEL_SHARE * typePx) / scale;
  // From afar a label is as large as many connectors together.
  const bucket = Math.max(USUAL_BUCKET, 2 * sizeMm);
  const taken = rectBuckets<unknown>(bucket);
  for (const block of blocks) taken.add(block.shell, block);
  for (const plug of plugs) taken.add(plug.body, plug);
  if (wiresNeeded(scale)) {
    for (const { box } of flags) taken.add(grown(box, SIGN_PX / scale), box);
    for (const { path, width: across } of [...wires, ...sleeves])
      for (const leg of legsOf(path, across)) taken.add(leg, leg);
  }
  const bored = rectBuckets<unknown>(bucket);
  for (const hole of holes) bored.add(rectAbout(hole.centre, 2 * hole.radius, 2 * hole.radius), hole);
  return blocks.flatMap((block) => {
    const text = cut(block.connector.print || block.connector.title);
    const width = measureByTable(text, sizeMm, 'strong');
    const box = firstFree(spotsAbout(block.shell, width, sizeMm * 1.15), taken, bored);
    if (box === undefined) return [];
    const label = { text, box, sizeMm };
    // Side by side two names would read as one.
    const apart = NAMES_APART * sizeMm;
    taken.add({ ...box, x: box.x - apart, width: box.width + 2 * apart }, label);
    return [label];
  });
}

/** The first spot where nothing stands; one over a hole where there is no other. */
function firstFree(
  spots: Iterable<Rect>,
  taken: RectBuckets<unknown>,
  bored: RectBuckets<unknown>,
): Rect | undefined {
  let overHole: Rect | undefined;
  for (const spot of spots) {
    if (taken.isTaken(spot)) continue;
    if (!bored.isTaken(spot)) return spot;
    overHole ??= spot;
  }
  return overHole;
}

/** From afar a print as long as a sentence would run over the whole board. */
function cut(print: string): string {
  const letters = [...print];
  return letters.length <= LONGEST ? print : `${letters.slice(0, LONGEST - 1).join('')}…`;
}

/** Places for a label round a rectangle, the best first. */
export function* spotsAbout(shell: Rect, width: number, height: number): Generator<Rect> {
  const middle = centreOf(shell);
  const gap = height * 0.2;
  const right = shell.x + shell.width;
  const above = shell.y - gap - height;
  const below = shell.y + shell.height + gap;
  yield { x: middle.x - width / 2, y: above, width, height };
  yield { x: middle.x - width / 2, y: below, width, height };
  yield { x: right + gap, y: middle.y - height / 2, width, height };
  yield { x: shell.x - gap - width, y: middle.y - height / 2, width, height };
  for (const y of [above, below]) {
    yield { x: shell.x, y, width, height };
    yield { x: right - width, y, width, height };
    yield { x: middle.x - width / 2, y: y + (y === above ? -height : height), width, height };
  }
}

export function drawFarLabels(pen: Pen, labels: readonly FarLabel[]): void {
  pen.context.fillStyle = pen.palette.ink;
  for (const { text, box, sizeMm } of labels)
    drawText(pen, { text, at: centreOf(box), sizeMm, face: 'strong' });
}
