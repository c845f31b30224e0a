import { addTurns, type Mm, type Turn } from '../base/units';
import type { Seat } from '../document/build';
import type { Connector, Place, Side } from '../document/connector';
import { SIDES } from '../document/connector';
import type { Cell, Grid } from '../document/grid';
import { rowPitchOf } from '../document/grid';
import type { Plug } from '../document/lead';

/** A point of the board: millimetres from its top left corner, x to the right, y down. */
export interface Point {
  readonly xMm: Mm;
  readonly yMm: Mm;
}

/** An upright rectangle of the board. Everything turns by quarters, so nothing else is needed. */
export interface Box {
  readonly leftMm: Mm;
  readonly topMm: Mm;
  readonly rightMm: Mm;
  readonly bottomMm: Mm;
}

/** Where and how a plug sits, without saying which. */
export type Position = Pick<Seat, 'at' | 'turn'>;

/** The point turned clockwise about the origin. */
export function turnedPoint({ xMm, yMm }: Point, turn: Turn): Point {
  switch (turn) {
    case 0:
      return { xMm, yMm };
    case 90:
      return { xMm: -yMm, yMm: xMm };
    case 180:
      return { xMm: -xMm, yMm: -yMm };
    case 270:
      return { xMm: yMm, yMm: -xMm };
  }
}

/** The side that a side faces after a turn clockwise. */
export function turnedSide(side: Side, turn: Turn): Side {
  return SIDES[(SIDES.indexOf(side) + turn / 90) % 4] ?? side;
}

/** The turn that undoes a turn. */
export function turnBack(turn: Turn): Turn {
  return turn === 90 ? 270 : turn === 270 ? 90 : turn;
}

/** The connector's cell under a cell of the plug. Either may lie outside its grid. */
export function cellUnder({ at, turn }: Position, [row, col]: Cell): Cell {
  switch (turn) {
    case 0:
      return [at[0] + row, at[1] + col];
    case 90:
      return [at[0] + col, at[1] - row];
    case 180:
      return [at[0] - row, at[1] - col];
    case 270:
      return [at[0] - col, at[1] + row];
  }
}

/** Where the plug's first cell lies when one of its cells lies over a given one of the connector. */
export function firstCell(turn: Turn, plugCell: Cell, [row, col]: Cell): Seat['at'] {
  const [down, along] = cellUnder({ at: [0, 0], turn }, plugCell);
  return [row - down, col - along];
}

/** Centre of a connector's cell on the board. */
export function cellCentre({ grid, place }: Pick<Connector, 'grid' | 'place'>, [row, col]: Cell): Point {
  return fromFrame(place, place.turn, { xMm: col * grid.pitchMm, yMm: row * rowPitchOf(grid) });
}

/** The middle of a seated plug's body on the board. */
export function plugCentre(plug: Plug, connector: Connector, seat: Position): Point {
  const first = cellCentre(connector, seat.at);
  return fromFrame(first, addTurns(connector.place.turn, seat.turn), gridMiddle(plug.grid));
}

/** The rectangle of a connector: half a pitch round its outermost positions. */
export function connectorBox(connector: Connector): Box {
  return gridBox(connector.grid, connector.place, connector.place.turn);
}

/** The rectangle of a seated plug's body: all its rows and columns, half a pitch round the outermost. */
export function plugBox(plug: Plug, connector: Connector, seat: Position): Box {
  return gridBox(plug.grid, cellCentre(connector, seat.at), addTurns(connector.place.turn, seat.turn));
}

/** The point from the middle of a grid's first cell to the middle of the whole grid, unturned. */
export function gridMiddle(grid: Grid): Point {
  return { xMm: ((grid.cols - 1) * grid.pitchMm) / 2, yMm: ((grid.rows - 1) * rowPitchOf(grid)) / 2 };
}

/** A point given in a frame that lies at `origin`, turned clockwise by `turn`. */
function fromFrame(origin: Point | Place, turn: Turn, point: Point): Point {
  const { xMm, yMm } = turnedPoint(point, turn);
  return { xMm: origin.xMm + xMm, yMm: origin.yMm + yMm };
}

function gridBox(grid: Grid, first: Point | Place, turn: Turn): Box {
  const halfX = grid.pitchMm / 2;
  const halfY = rowPitchOf(grid) / 2;
  const { xMm, yMm } = gridMiddle(grid);
  const a = fromFrame(first, turn, { xMm: -halfX, yMm: -halfY });
  const b = fromFrame(first, turn, { xMm: 2 * xMm + halfX, yMm: 2 * yMm + halfY });
  return {
    leftMm: Math.min(a.xMm, b.xMm),
    topMm: Math.min(a.yMm, b.yMm),
    rightMm: Math.max(a.xMm, b.xMm),
    bottomMm: Math.max(a.yMm, b.yMm),
  };
}

/** Bodies may press into each other by this much before one is in the way: mouldings vary, plastic gives. */
export const GIVE_MM: Mm = 0.2;

/** Whether two bodies would be in the same place. Bodies side by side at one pitch are not. */
export function boxesCollide(a: Box, b: Box): boolean {
  return (
    Math.min(a.rightMm, b.rightMm) - Math.max(a.leftMm, b.leftMm) > GIVE_MM &&
    Math.min(a.bottomMm, b.bottomMm) - Math.max(a.topMm, b.topMm) > GIVE_MM
  );
}

/** How far a box reaches past another on one side of the board; negative where it stays within. */
export function reachPast(box: Box, other: Box, side: Side): Mm {
  switch (side) {
    case 'top':
      return other.topMm - box.topMm;
    case 'right':
      return box.rightMm - other.rightMm;
    case 'bottom':
      return box.bottomMm - other.bottomMm;
    case 'left':
      return other.leftMm - box.leftMm;
  }
}
