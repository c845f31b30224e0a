import { WAYS_OUT, type WayOut } from '../../../boards/drawing/frame';
import { grown } from '../../../boards/drawing/geometry';
import type { Obstacles } from './obstacles';
import type { WiredPlug } from './wiring';

/** The way on which a plug's wires are shortest. A single row has its names before it, so wires go after. */
function naturalWay({ block, ends }: WiredPlug): WayOut {
  const { frame, grid } = block;
  const last = (frame.tall ? grid.cols : grid.rows) - 1;
  if (last === 0) return 'after';
  const rows = ends.map((end) => (frame.tall ? end.col : end.row));
  const mean = rows.reduce((sum, row) => sum + row, 0) / Math.max(1, rows.length);
  return mean <= last / 2 ? 'before' : 'after';
}

/** The natural way, or the other one where only that is free of other connectors. */
export function wayFor(wired: WiredPlug, standing: Obstacles): WayOut {
  const natural = naturalWay(wired);
  const other = natural === 'before' ? 'after' : 'before';
  return !isFree(wired, natural, standing) && isFree(wired, other, standing) ? other : natural;
}

/** Nothing of another connector stands where the plug's wires and its flag would go. */
function isFree({ block, shape }: WiredPlug, way: WayOut, standing: Obstacles): boolean {
  const { frame, connector, reach } = block;
  const along = frame.alongSpan(shape.body);
  const shell = frame.outSpan(block.shell);
  const flagDepth = frame.tall ? 4.5 : 2;
  const out =
    way === 'before'
      ? { from: reach.before - flagDepth, to: shell.from }
      : { from: shell.to, to: reach.after + flagDepth };
  return standing.free([grown(frame.rect(along, out), -0.05)], ({ of }) => of !== connector.id);
}

/** The wires of a block's small plugs by the way they leave. */
export function byWay(
  plugs: readonly WiredPlug[],
  wayOf: (wired: WiredPlug) => WayOut,
): readonly { readonly way: WayOut; readonly plugs: readonly WiredPlug[] }[] {
  return WAYS_OUT.map((way) => ({ way, plugs: plugs.filter((wired) => wayOf(wired) === way) })).filter(
    (group) => group.plugs.length > 0,
  );
}
