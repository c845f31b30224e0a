import { addTurns, type Mm, type Turn } from '../base/units';
import type { Build, Seat } from '../document/build';
import type { Connector } from '../document/connector';
import type { Cell } from '../document/grid';
import { rowPitchOf } from '../document/grid';
import type { Plug } from '../document/lead';
import { type PlugRef, plugOf } from '../document/lookup';
import { cellUnder, gridMiddle, type Point, plugCentre, turnBack, turnedPoint } from './geometry';

/** A plug in the hand jumps to the pins when its middle is within this many pitches of a seat's. */
const SNAP_PITCHES = 1.25;

/**
 * The seat that a plug in the hand would take: the one whose middle lies nearest to the pointer, among
 * those that cover at least one position of a connector; none when all are too far. It may well not fit.
 */
export function seatUnder(build: Build, ref: PlugRef, turn: Turn, pointer: Point): Seat | null {
  const plug = plugOf(build, ref);
  if (!plug) throw new Error(`No plug ${ref.lead} ${ref.plug}`);
  let nearest: Seat | null = null;
  let nearestMm: Mm = Number.POSITIVE_INFINITY;
  for (const connector of build.board.connectors) {
    const at = nearestCell(plug, connector, turn, pointer);
    const away = distance(plugCentre(plug, connector, { at, turn }), pointer);
    const reach = SNAP_PITCHES * Math.max(connector.grid.pitchMm, rowPitchOf(connector.grid));
    if (away > reach || away >= nearestMm) continue;
    nearest = { lead: ref.lead, plug: ref.plug, connector: connector.id, at, turn };
    nearestMm = away;
  }
  return nearest;
}

/** The cell for the plug's first cell that brings its middle nearest to the pointer, still touching the grid. */
function nearestCell(plug: Plug, connector: Connector, turn: Turn, pointer: Point): Seat['at'] {
  const { grid, place } = connector;
  const toMiddle = turnedPoint(gridMiddle(plug.grid), addTurns(place.turn, turn));
  const first = turnedPoint(
    { xMm: pointer.xMm - toMiddle.xMm - place.xMm, yMm: pointer.yMm - toMiddle.yMm - place.yMm },
    turnBack(place.turn),
  );
  // The plug's last cell lies this far from its first, in cells of the connector.
  const [lastRow, lastCol] = cellUnder({ at: [0, 0], turn }, [plug.grid.rows - 1, plug.grid.cols - 1]);
  const cell: Cell = [Math.round(first.yMm / rowPitchOf(grid)), Math.round(first.xMm / grid.pitchMm)];
  return [touching(cell[0], lastRow, grid.rows), touching(cell[1], lastCol, grid.cols)];
}

/** The nearest start from which a run of cells, reaching `reach` further, still covers one of `count`. */
function touching(start: number, reach: number, count: number): number {
  const lowest = -Math.max(0, reach);
  const highest = count - 1 - Math.min(0, reach);
  return Math.min(highest, Math.max(lowest, start)) + 0;
}

function distance(a: Point, b: Point): Mm {
  return Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
}
