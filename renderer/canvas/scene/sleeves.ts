import type { Mm } from '../../../boards/base/units';
import { further, outward, type Span, WAYS_OUT, type WayOut } from '../../../boards/drawing/frame';
import { grown, legsOf, type Point, type Rect } from '../../../boards/drawing/geometry';
import type { Measure } from '../../../boards/drawing/measure';
import { SIZES } from '../../../boards/drawing/sizes';
import { flagIn, flagSize } from './flags';
import type { Obstacle, Obstacles } from './obstacles';
import type { FlagShape, SleeveShape, WiredPlug } from './wiring';

interface Candidate {
  readonly path: readonly Point[];
  readonly box: Rect;
}

const STUB: Mm = 0.7;
const REACHES: readonly Mm[] = [0, 1, 2, 3.5, 5];

/**
 * The sleeve of a block plug leaves at one of the block's ends, where no names stand: straight, the
 * nearer end first, or round the corner past the names. Undefined when all of that is taken.
 */
export function sleeveOf(
  wired: WiredPlug,
  standing: Obstacles,
  measure: Measure,
): { readonly sleeve: SleeveShape; readonly flag: FlagShape } | undefined {
  const own = wired.block.connector.id;
  const width = sleeveWidth(wired);
  const counts = (other: Obstacle) => other.of !== own || (other.kind !== 'shell' && other.kind !== 'plug');
  for (const { path, box } of candidates(wired, width, measure)) {
    if (!standing.free([...legsOf(path, width + 0.1), grown(box, 0.12)], counts)) continue;
    for (const leg of legsOf(path, width)) standing.add(leg, { kind: 'wire', of: own });
    standing.add(box, { kind: 'flag', of: own });
    return {
      sleeve: { plug: wired.shape.ref, path, width, colours: wired.ends.map((end) => end.colour) },
      flag: flagIn(box, wired.shape, measure),
    };
  }
  return undefined;
}

function sleeveWidth({ block }: WiredPlug): Mm {
  return Math.min(SIZES.sleeve, 0.34 * Math.min(block.grid.pitchX, block.grid.pitchY));
}

function* candidates(wired: WiredPlug, width: Mm, measure: Measure): Generator<Candidate> {
  const { block, shape } = wired;
  const { frame } = block;
  const shell = frame.alongSpan(block.shell);
  const body = frame.alongSpan(shape.body);
  const ends: readonly WayOut[] =
    shell.to - body.to <= body.from - shell.from ? ['after', 'before'] : ['before', 'after'];
  for (const reach of REACHES) for (const end of ends) yield straight(wired, end, reach, measure);
  for (const reach of REACHES)
    for (const end of ends)
      for (const way of WAYS_OUT) yield cornered(wired, end, way, reach, width, measure);
}

function lineOut({ block, shape }: WiredPlug, end: WayOut) {
  const { frame } = block;
  const shell = frame.alongSpan(block.shell);
  const body = frame.alongSpan(shape.body);
  const out = frame.outSpan(shape.body);
  return {
    from: end === 'before' ? body.from : body.to,
    edge: end === 'before' ? Math.min(shell.from, body.from) : Math.max(shell.to, body.to),
    out: (out.from + out.to) / 2,
  };
}

function straight(wired: WiredPlug, end: WayOut, reach: Mm, measure: Measure): Candidate {
  const { frame } = wired.block;
  const { from, edge, out } = lineOut(wired, end);
  const size = flagSize(wired.shape.name, measure);
  const tip = further(end, edge, STUB + reach);
  const alongSize = frame.tall ? size.height : size.width;
  const outSize = frame.tall ? size.width : size.height;
  return {
    path: [frame.point(from, out), frame.point(tip, out)],
    box: frame.rect(outward(end, tip, alongSize), about(out, outSize)),
  };
}

function cornered(
  wired: WiredPlug,
  end: WayOut,
  way: WayOut,
  reach: Mm,
  width: Mm,
  measure: Measure,
): Candidate {
  const { frame, reach: names } = wired.block;
  const { from, edge, out } = lineOut(wired, end);
  const size = flagSize(wired.shape.name, measure);
  const turn = further(end, edge, width / 2 + 0.2);
  const tip = further(way, names[way], SIZES.firstFlag + reach);
  const alongSize = frame.tall ? size.height : size.width;
  const outSize = frame.tall ? size.width : size.height;
  const boxEnd = further(end, turn, width / 2 + 0.1);
  const inward = end === 'before' ? 'after' : 'before';
  return {
    path: [frame.point(from, out), frame.point(turn, out), frame.point(turn, tip)],
    box: frame.rect(outward(inward, boxEnd, alongSize), outward(way, tip, outSize)),
  };
}

function about(middle: Mm, size: Mm): Span {
  return { from: middle - size / 2, to: middle + size / 2 };
}
