import type { Connector } from '../../../boards/document/connector';
import type { Cell, Grid } from '../../../boards/document/grid';
import type { Plug } from '../../../boards/document/lead';
import { gridIndex } from '../../../boards/document/numbering';
import type { Position } from '../../../boards/fit/geometry';
import { EIGHTH_MM } from './random-bench';

/** A point in eighths of a pitch; a quarter turn is written out once and repeated. */
export type Point = readonly [x: number, y: number];
export type Paint = ReadonlySet<number>;

/** A grid laid on the paper: where its first cell is, and how far it is turned. */
export interface Sheet {
  readonly grid: Grid;
  readonly origin: Point;
  readonly turn: number;
}

export function quarterTurns([x, y]: Point, turn: number): Point {
  let turned: Point = [x, y];
  for (let done = 0; done < turn; done += 90) turned = [-turned[1], turned[0]];
  return turned;
}

const eighths = (mm: number) => Math.round(mm / EIGHTH_MM);
export const stepX = (grid: Grid) => eighths(grid.pitchMm);
export const stepY = (grid: Grid) => eighths(grid.rowPitchMm ?? grid.pitchMm);

export function sheetOf({ grid, place }: Connector): Sheet {
  return { grid, origin: [eighths(place.xMm), eighths(place.yMm)], turn: place.turn };
}

export function seatedSheet(plug: Plug, connector: Connector, { at, turn }: Position): Sheet {
  const under = sheetOf(connector);
  return { grid: plug.grid, origin: cellOnPaper(under, at), turn: under.turn + turn };
}

function onPaper({ origin, turn }: Sheet, point: Point): Point {
  const [x, y] = quarterTurns(point, turn);
  return [origin[0] + x, origin[1] + y];
}

export function cellOnPaper(sheet: Sheet, [row, col]: Cell): Point {
  return onPaper(sheet, [col * stepX(sheet.grid), row * stepY(sheet.grid)]);
}

/** Half the width of the paper in squares; the board's corner is in its middle. */
const HALF = 1_024;

/** The square that a point lies in, as one number. */
function square([x, y]: Point): number {
  return (Math.floor(y) + HALF) * 2 * HALF + Math.floor(x) + HALF;
}

/** The middle of a square. */
export function middleOf(each: number): Point {
  return [(each % (2 * HALF)) - HALF + 0.5, Math.floor(each / (2 * HALF)) - HALF + 0.5];
}

/** The squares round the middle of a cell. They are turned by their middles, so that none is lost. */
function paintCell(sheet: Sheet, [row, col]: Cell, halfX: number, halfY: number): number[] {
  const squares: number[] = [];
  const [left, top] = [col * stepX(sheet.grid), row * stepY(sheet.grid)];
  for (let x = -halfX; x < halfX; x++)
    for (let y = -halfY; y < halfY; y++)
      squares.push(square(onPaper(sheet, [left + x + 0.5, top + y + 0.5])));
  return squares;
}

/** A post is two eighths of a pitch square. */
export function paintPost(sheet: Sheet, cell: Cell): number[] {
  return paintCell(sheet, cell, 1, 1);
}

/** The whole rectangle of a grid. */
export function paintAll(sheet: Sheet): Paint {
  const squares = new Set<number>();
  for (let row = 0; row < sheet.grid.rows; row++)
    for (let col = 0; col < sheet.grid.cols; col++)
      for (const each of paintCell(sheet, [row, col], stepX(sheet.grid) / 2, stepY(sheet.grid) / 2))
        squares.add(each);
  return squares;
}

export function share(a: Paint, b: Iterable<number>): boolean {
  for (const each of b) if (a.has(each)) return true;
  return false;
}

/** Keeps the paint of one thing, so that trying many seats on one bench paints it once. */
function keepingPaint(paint: (connector: Connector) => Paint): (connector: Connector) => Paint {
  const kept = new WeakMap<Connector, Paint>();
  return (connector) => {
    const squares = kept.get(connector) ?? paint(connector);
    kept.set(connector, squares);
    return squares;
  };
}

export const rectangleOf = keepingPaint((connector) => paintAll(sheetOf(connector)));

/** What stands up from the board: single posts where they are open, else the whole rectangle. */
export const standingPartOf = keepingPaint((connector) => {
  if (connector.family !== 'pin-header' || connector.shroud?.walls.length) return rectangleOf(connector);
  const pins = gridIndex(connector.grid).positions.filter(({ label }) => stands(connector, label));
  return new Set(pins.flatMap(({ cell }) => paintPost(sheetOf(connector), cell)));
});

export function stands(connector: Connector, label: string): boolean {
  return !connector.pins.some((pin) => pin.pin === label && pin.missing);
}
