import type { Mm } from '../../base/units';
import type { Wire } from '../../document/lead';
import type { Block } from '../../drawing/block';
import type { WayOut } from '../../drawing/frame';
import type { Point } from '../../drawing/geometry';
import { laneWidth, pinSize } from '../../drawing/sizes';
import { jointsOfPlug } from '../../fit/joints';
import type { SeatedPlug } from '../../fit/seated-plug';

/** A wire where it leaves its hole: the way it takes out of the block, in a lane that no name may use. */
export interface WireEnd {
  readonly seated: SeatedPlug;
  readonly wire: Wire;
  readonly way: WayOut;
  /** Middle of the hole. */
  readonly centre: Point;
  /** Along the block: where the hole's square ends, and the middle of its lane. */
  readonly squareMm: Mm;
  readonly laneMm: Mm;
}

interface WireEnds {
  readonly ends: readonly WireEnd[];
  /** Wires of inner rows, which have no way out that could be drawn. */
  readonly hidden: number;
}

/** The wires of the plugs on a block. */
export function wireEndsOf(block: Block, plugs: readonly SeatedPlug[]): WireEnds {
  const { frame, grid } = block;
  const pitch = frame.tall ? grid.pitchY : grid.pitchX;
  const half = pinSize(grid.pitchX, grid.pitchY) / 2;
  const depth = frame.tall ? grid.cols : grid.rows;
  const all = plugs.flatMap((seated) =>
    jointsOfPlug(seated).map(({ landing, wire }) => {
      const { row, col, centre } = grid.place(landing.cell);
      const along = frame.along(centre);
      const lane = along + pitch / 2 - laneWidth(pitch) / 2;
      const way = wayOut(frame.tall ? col : row, depth);
      return { seated, wire, way, centre, squareMm: along + half, laneMm: lane };
    }),
  );
  const ends = all.flatMap(({ way, ...end }) => (way === null ? [] : [{ ...end, way }]));
  return { ends, hidden: all.length - ends.length };
}

/** Names of a single row stand before it, so its wires leave after it; null for an inner row. */
function wayOut(rank: number, depth: number): WayOut | null {
  if (rank < 0) return 'before';
  if (rank >= depth - 1) return 'after';
  return rank === 0 ? 'before' : null;
}
