import { TURNS, type Turn } from '../../../../boards/base/units';
import type { Build, Seat } from '../../../../boards/document/build';
import type { Connector } from '../../../../boards/document/connector';
import type { Plug } from '../../../../boards/document/lead';
import { connectorOf, type PlugRef, plugOf, seatOf } from '../../../../boards/document/lookup';
import { gridIndex } from '../../../../boards/document/numbering';
import { cellCentre, cellUnder, type Point, turnBack, turnedPoint } from '../../../../boards/fit/geometry';

/** As the person sees the canvas. */
export type Direction = 'left' | 'right' | 'up' | 'down';

const ARROWS: Readonly<Record<Direction, Point>> = {
  left: { xMm: -1, yMm: 0 },
  right: { xMm: 1, yMm: 0 },
  up: { xMm: 0, yMm: -1 },
  down: { xMm: 0, yMm: 1 },
};

/** A direction on the screen as one on the board: the view's turn undone, then its mirror. */
function onBoard(direction: Direction, view: Build['view']): Point {
  const { xMm, yMm } = turnedPoint(ARROWS[direction], turnBack(view.turn));
  return { xMm: view.mirrored ? -xMm : xMm, yMm };
}

/** Where a plug begins when it is taken into the hand: where it sits, else at the hint, else on the first pin. */
export function firstCandidate(build: Build, ref: PlugRef, hint?: Seat): Seat | null {
  const first = build.board.connectors[0];
  return (
    seatOf(build, ref) ??
    hint ??
    (first === undefined ? null : { ...ref, connector: first.id, at: [0, 0], turn: 0 })
  );
}

/**
 * One cell further in a direction as seen on the screen. Where the plug would touch no position
 * any more, it goes on to the nearest connector that way; with none there, it stays.
 */
export function stepCandidate(build: Build, seat: Seat, direction: Direction): Seat {
  const connector = connectorOf(build.board, seat.connector);
  const plug = plugOf(build, seat);
  if (connector === undefined || plug === undefined) return seat;
  const along = onBoard(direction, build.view);
  const cells = turnedPoint(along, turnBack(connector.place.turn));
  const next: Seat = { ...seat, at: [seat.at[0] + cells.yMm, seat.at[1] + cells.xMm] };
  return touches(connector, plug, next) ? next : (nearestThatWay(build, seat, connector, along) ?? seat);
}

function touches(connector: Connector, plug: Plug, seat: Seat): boolean {
  const index = gridIndex(connector.grid);
  return gridIndex(plug.grid).positions.some(
    ({ cell }) => index.labelAt(cellUnder(seat, cell)) !== undefined,
  );
}

/** How far aside something may lie and still be "that way". */
const WIDEST = 2;

/** The nearest position of another connector; straight ahead counts more than near. */
function nearestThatWay(build: Build, seat: Seat, from: Connector, along: Point): Seat | undefined {
  const here = cellCentre(from, seat.at);
  let best: { readonly seat: Seat; readonly cost: number } | undefined;
  for (const connector of build.board.connectors) {
    if (connector.id === from.id) continue;
    for (const { cell } of gridIndex(connector.grid).positions) {
      const there = cellCentre(connector, cell);
      const dx = there.xMm - here.xMm;
      const dy = there.yMm - here.yMm;
      const ahead = dx * along.xMm + dy * along.yMm;
      const aside = Math.abs(dx * along.yMm) + Math.abs(dy * along.xMm);
      const cost = ahead + 2 * aside;
      if (ahead <= 0 || aside > WIDEST * ahead || (best && best.cost <= cost)) continue;
      best = { seat: { ...seat, connector: connector.id, at: [cell[0], cell[1]] }, cost };
    }
  }
  return best?.seat;
}

/** The first cell of the next (1) or the last (−1) connector in the order of the board sheet. */
export function otherConnector(build: Build, seat: Seat, by: 1 | -1): Seat {
  const all = build.board.connectors;
  const at = all.findIndex((connector) => connector.id === seat.connector);
  const next = all[(at + by + all.length) % all.length];
  return next === undefined ? seat : { ...seat, connector: next.id, at: [0, 0] };
}

/** A quarter turn clockwise (1) or back (−1). */
export function turnedBy(turn: Turn, by: 1 | -1): Turn {
  return TURNS[(TURNS.indexOf(turn) + by + TURNS.length) % TURNS.length] ?? 0;
}
