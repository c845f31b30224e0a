import { grouped } from '../../base/grouped';
import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import { plugName } from '../../document/names';
import type { Block } from '../../drawing/block';
import { further, outward, WAYS_OUT, type WayOut } from '../../drawing/frame';
import type { Line, Rect } from '../../drawing/geometry';
import { shortened, wrapped } from '../../drawing/lines-of-text';
import type { Measure } from '../../drawing/measure';
import type { NameShape } from '../../drawing/names';
import { laneWidth, SIZES } from '../../drawing/sizes';
import { wireColour } from './wire-colour-words';
import type { WireEnd } from './wire-ends';

/** A wire from its hole outward, with the colour that is written at its end. */
export interface LaidWire {
  readonly end: WireEnd;
  /** Legs as upright strips. */
  readonly legs: readonly Rect[];
  readonly stripes: readonly Rect[];
}

/** What gathers the wires of one plug on one way, with its name. */
interface Bracket {
  readonly line: Line;
  readonly name: NameShape;
}

export interface WireLayout {
  readonly wires: readonly LaidWire[];
  readonly words: readonly NameShape[];
  readonly brackets: readonly Bracket[];
}

const AFTER_NAMES: Mm = 0.45;
const BEFORE_WORD: Mm = 0.15;
const BEFORE_BRACKET: Mm = 0.25;
const WIRE: Mm = 0.22;

/** Lays out wires beyond the names: each straight in its lane, its colour at its end, plugs' names beyond. */
export function layWires(build: Build, block: Block, ends: readonly WireEnd[], measure: Measure): WireLayout {
  const sides = WAYS_OUT.map((way) =>
    layWay(
      build,
      block,
      way,
      ends.filter((end) => end.way === way),
      measure,
    ),
  );
  return {
    wires: sides.flatMap(({ wires }) => wires),
    words: sides.flatMap(({ words }) => words),
    brackets: sides.flatMap(({ brackets }) => brackets),
  };
}

function layWay(
  build: Build,
  block: Block,
  way: WayOut,
  ends: readonly WireEnd[],
  measure: Measure,
): WireLayout {
  const { frame } = block;
  const span = frame.outSpan(block.shell);
  const reach = block.reach[way];
  const outermost = ends.map((end) => frame.out(end.centre));
  const edge =
    way === 'before' ? Math.min(reach, span.from, ...outermost) : Math.max(reach, span.to, ...outermost);
  const tip = further(way, edge, AFTER_NAMES);
  const wires = ends.map((end) => layWire(block, end, tip));
  const lanes = [...grouped(ends, ({ laneMm }) => Math.round(laneMm * 1_000))].map(([, shared]) => shared);
  const words = lanes.map((shared) => {
    const text = [...new Set(shared.map(({ wire }) => wireColour(wire)))].join(' + ');
    return outwardText(block, way, shared[0]?.laneMm ?? 0, further(way, tip, BEFORE_WORD), text, measure);
  });
  const outs = words.map(({ box }) => frame.outSpan(box));
  const ended =
    way === 'before'
      ? Math.min(tip, ...outs.map(({ from }) => from))
      : Math.max(tip, ...outs.map(({ to }) => to));
  const outMm = further(way, ended, BEFORE_BRACKET);
  const byPlug = grouped(ends, ({ seated }) => seated.seat);
  const brackets = [...byPlug.values()].map((own) => bracketOf(build, block, way, own, outMm, measure));
  return { wires, words, brackets };
}

/** From the square along the row to the lane, then straight out. */
function layWire({ frame }: Block, end: WireEnd, tip: Mm): LaidWire {
  const out = frame.out(end.centre);
  const strip = (half: Mm): readonly Rect[] => [
    frame.rect({ from: end.squareMm - 0.06, to: end.laneMm + half }, { from: out - half, to: out + half }),
    frame.rect(
      { from: end.laneMm - half, to: end.laneMm + half },
      out < tip ? { from: out - half, to: tip } : { from: tip, to: out + half },
    ),
  ];
  return { end, legs: strip(WIRE / 2), stripes: end.wire.stripe === undefined ? [] : strip(WIRE / 6) };
}

/** A line of text that runs outward: upright beside a wide block, level beside a tall one. */
function outwardText(
  { frame }: Block,
  way: WayOut,
  middle: Mm,
  edge: Mm,
  text: string,
  measure: Measure,
): NameShape {
  const sizeMm = SIZES.name;
  const line = shortened(text, SIZES.nameReach, sizeMm, 'text', measure);
  const half = (sizeMm * SIZES.lineHeight) / 2;
  const width = measure(line, sizeMm, 'text');
  const upright = !frame.tall;
  return {
    pin: '',
    full: text,
    lines: [line],
    sizeMm,
    upright,
    align: (way === 'before') === upright ? 'start' : 'end',
    box: frame.rect({ from: middle - half, to: middle + half }, outward(way, edge, width)),
  };
}

function bracketOf(
  build: Build,
  block: Block,
  way: WayOut,
  own: readonly WireEnd[],
  outMm: Mm,
  measure: Measure,
): Bracket {
  const { frame, grid } = block;
  const pitch = frame.tall ? grid.pitchY : grid.pitchX;
  const lanes = own.map(({ laneMm }) => laneMm);
  const [least, most] = [Math.min(...lanes), Math.max(...lanes)];
  const middle = (least + most) / 2;
  const line: Line = [frame.point(least - WIRE, outMm), frame.point(most + WIRE, outMm)];
  const [first] = own;
  const text = first ? plugName(build, { lead: first.seated.lead.id, plug: first.seated.plug.id }) : '';
  const edge = further(way, outMm, 0.2);
  // The cells of the plug's own wires: their lanes lie at the far end of each.
  const to = most + laneWidth(pitch) / 2 - pitch * 0.03;
  const from = least + laneWidth(pitch) / 2 - pitch * 0.97;
  const set = frame.tall ? undefined : setAcross(text, to - from, measure);
  if (!set) return { line, name: outwardText(block, way, middle, edge, text, measure) };
  const { lines, sizeMm } = set;
  const width = Math.max(...lines.map((line) => measure(line, sizeMm, 'text')));
  const start = Math.min(Math.max(middle - width / 2, from), to - width);
  const out = outward(way, edge, lines.length * sizeMm * SIZES.lineHeight);
  const box = frame.rect({ from: start, to: start + width }, out);
  return { line, name: { pin: '', full: text, lines, sizeMm, upright: false, align: 'center', box } };
}

function setAcross(text: string, room: Mm, measure: Measure) {
  for (const sizeMm of [SIZES.name, SIZES.nameLeast]) {
    const lines = wrapped(text, (line) => measure(line, sizeMm, 'text') <= room, 3);
    if (lines && lines.length > 0) return { lines, sizeMm };
  }
  return undefined;
}
