import type { Mm } from '../../../boards/base/units';
import { type PlugRef, samePlug } from '../../../boards/document/lookup';
import type { Block } from '../../../boards/drawing/block';
import { further, outward, type Span, type WayOut } from '../../../boards/drawing/frame';
import { centreOf, grown, legsOf, type Rect, rectAbout } from '../../../boards/drawing/geometry';
import { shortened } from '../../../boards/drawing/lines-of-text';
import type { Measure } from '../../../boards/drawing/measure';
import type { PlugShape } from '../../../boards/drawing/plug-shape';
import { SIZES } from '../../../boards/drawing/sizes';
import { type LanedWire, lanedWires } from './lanes';
import type { Obstacles } from './obstacles';
import type { FlagShape, WiredPlug, WireShape } from './wiring';

/** Wires of one plug that leave next to each other, with nothing between. They share a flag. */
interface Run {
  readonly wired: WiredPlug;
  readonly wires: readonly LanedWire[];
  readonly wireSpan: Span;
}

export interface Placed {
  readonly flags: readonly FlagShape[];
  readonly wires: readonly WireShape[];
  /** Plugs for whose wires there is no free way out. */
  readonly stuck: readonly WiredPlug[];
}

const CLEARANCE = SIZES.wire / 2 + 0.12;
const STEP: Mm = 0.35;
const FURTHEST: Mm = 9;

function runsOf(wires: readonly LanedWire[]): readonly Run[] {
  const sorted = [...wires].sort((a, b) => a.along - b.along);
  const runs: LanedWire[][] = [];
  for (const wire of sorted) {
    const run = runs.at(-1);
    if (run?.[0]?.wired === wire.wired) run.push(wire);
    else runs.push([wire]);
  }
  return runs.flatMap((run) => {
    const [first] = run;
    const last = run.at(-1);
    if (!first || !last) return [];
    return [{ wired: first.wired, wires: run, wireSpan: { from: first.along, to: last.along } }];
  });
}

/** Width and height of a flag for some text. */
export function flagSize(text: string, measure: Measure): { readonly width: Mm; readonly height: Mm } {
  return {
    width: Math.min(
      SIZES.flagWidest,
      measure(text, SIZES.flagText, 'mono') + 2 * SIZES.flagPad + SIZES.flagSign,
    ),
    height: SIZES.flagHeight,
  };
}

/** A flag in a box, its text cut to the box where that is narrow. */
export function flagIn(box: Rect, shape: PlugShape, measure: Measure): FlagShape {
  const sign = { x: box.x + SIZES.flagPad / 2 + SIZES.flagSign / 2, y: centreOf(box).y };
  const room = box.width - 2 * SIZES.flagPad - SIZES.flagSign;
  return {
    plug: shape.ref,
    text: shortened(shape.name, room + 1e-6, SIZES.flagText, 'mono', measure),
    full: shape.name,
    box,
    textMm: SIZES.flagText,
    sign,
    onBody: false,
  };
}

/** Beside a tall block: a bar over the ends of all wires, and the flag at its middle. */
function flagOnBar(room: Rect, shape: PlugShape, way: WayOut, measure: Measure): FlagShape {
  if (room.height <= SIZES.flagHeight + 1e-6) return flagIn(room, shape, measure);
  const { width } = room;
  const bar = { ...room, width: SIZES.flagBar };
  const box = rectAbout(centreOf(room), width - SIZES.flagBar, SIZES.flagHeight);
  return way === 'after'
    ? { ...flagIn({ ...box, x: room.x + SIZES.flagBar }, shape, measure), bar }
    : {
        ...flagIn({ ...box, x: room.x }, shape, measure),
        bar: { ...bar, x: room.x + width - SIZES.flagBar },
      };
}

/**
 * Runs a block's wires straight out on one way, past the names, each run to its own flag. From the
 * last run to the first: a flag never reaches back over the run before it, and where it reaches over
 * runs behind it, it stands further out than their flags. So no wire can cross a flag. A flag that
 * would meet something else steps outward.
 */
export function flagsOn(
  block: Block,
  plugs: readonly WiredPlug[],
  way: WayOut,
  standing: Obstacles,
  measure: Measure,
): Placed {
  const { frame } = block;
  const runs = runsOf(lanedWires(block, plugs, way));
  const firstEdge = further(way, block.reach[way], SIZES.firstFlag);
  const placed: { along: Span; end: Mm }[] = [];
  const flags: FlagShape[] = [];
  const wires: WireShape[] = [];
  const stuck = new Set<WiredPlug>();
  for (let index = runs.length - 1; index >= 0; index -= 1) {
    const run = runs[index];
    if (!run) continue;
    const size = flagSize(run.wired.shape.name, measure);
    const along = alongSpan(run, frame.tall ? size.height : size.width, runs[index - 1], runs[index + 1]);
    const outSize = frame.tall ? size.width + SIZES.flagBar : size.height;
    const nearest = placed
      .filter(
        (other) => other.along.from < along.to + SIZES.flagGap && along.from < other.along.to + SIZES.flagGap,
      )
      .map((other) => further(way, other.end, SIZES.flagGap));
    const start = way === 'before' ? Math.min(firstEdge, ...nearest) : Math.max(firstEdge, ...nearest);
    const spot = freeSpot(block, run, along, outSize, way, start, standing);
    if (!spot) {
      stuck.add(run.wired);
      continue;
    }
    placed.push({ along, end: further(way, spot.edge, outSize) });
    flags.push(
      frame.tall
        ? flagOnBar(spot.box, run.wired.shape, way, measure)
        : flagIn(spot.box, run.wired.shape, measure),
    );
    for (const wire of spot.wires) wires.push(wire);
    standing.add(spot.box, { kind: 'flag', of: block.connector.id });
    for (const wire of spot.wires)
      for (const leg of legsOf(wire.path, wire.width))
        standing.add(leg, { kind: 'wire', of: block.connector.id });
  }
  const free = ({ plug }: { plug: PlugRef }) => ![...stuck].some((wired) => samePlug(wired.shape.ref, plug));
  return { flags: flags.filter(free), wires: wires.filter(free), stuck: [...stuck] };
}

/** Over its own wires, and aside from the runs next to it as far as that goes. */
function alongSpan({ wireSpan }: Run, length: Mm, before: Run | undefined, after: Run | undefined): Span {
  const left = before ? apart(before.wireSpan.to, wireSpan.from) : Number.NEGATIVE_INFINITY;
  const right = after ? -apart(-after.wireSpan.from, -wireSpan.to) : Number.POSITIVE_INFINITY;
  const least = {
    from: Math.max(wireSpan.from - CLEARANCE, left),
    to: Math.min(wireSpan.to + CLEARANCE, right),
  };
  const size = Math.max(length, least.to - least.from);
  const centred = (least.from + least.to - size) / 2;
  const from = Math.min(Math.max(Math.min(centred, right - size), left, least.to - size), least.from);
  return { from, to: from + size };
}

/** A little after one wire, but never past the middle between it and the next. */
function apart(wire: Mm, next: Mm): Mm {
  return Math.min(wire + CLEARANCE, (wire + next) / 2);
}

function freeSpot(
  block: Block,
  run: Run,
  along: Span,
  outSize: Mm,
  way: WayOut,
  start: Mm,
  standing: Obstacles,
): { readonly edge: Mm; readonly box: Rect; readonly wires: readonly WireShape[] } | undefined {
  const { frame, connector } = block;
  for (let beyond = 0; beyond <= FURTHEST; beyond += STEP) {
    const edge = further(way, start, beyond);
    const box = frame.rect(along, outward(way, edge, outSize));
    const wires = run.wires.map((wire) => wireTo(wire, frame.point(wire.along, edge)));
    const corridors = wires.flatMap((wire) => legsOf(wire.path, wire.width + 0.06));
    // A wire that meets something will meet it however far out the flag stands.
    if (!standing.free(corridors, (other) => other.of !== connector.id || other.kind === 'name'))
      return undefined;
    if (standing.free([grown(box, 0.12)], () => true)) return { edge, box, wires };
  }
  return undefined;
}

function wireTo({ wired, end, path, width }: LanedWire, tip: { x: Mm; y: Mm }): WireShape {
  const { hole, wire: index } = end;
  const wire = { plug: wired.shape.ref, hole, wire: index, path: [...path, tip], width, colour: end.colour };
  return end.stripe === undefined ? wire : { ...wire, stripe: end.stripe };
}
