import type { Connector, Side } from '../document/connector';
import { cornersOf, grown, type Line, type Point, type Rect } from './geometry';
import { type Orientation, oriented } from './orientation';
import type { OrientedGrid } from './oriented-grid';
import { SIZES } from './sizes';

const NORMALS: Readonly<Record<Side, Point>> = {
  top: { x: 0, y: -1 },
  right: { x: 1, y: 0 },
  bottom: { x: 0, y: 1 },
  left: { x: -1, y: 0 },
};

/** The outside of a connector: its cells, a rim, and the walls of its shroud. */
export function shellRound(connector: Connector, cells: Rect, orientation: Orientation): Rect {
  const walls = (connector.shroud?.walls ?? []).map((side) => oriented(orientation, NORMALS[side]));
  const grow = (x: number, y: number) =>
    walls.some((wall) => wall.x === x && wall.y === y) ? SIZES.wall : 0;
  const left = grow(-1, 0);
  const top = grow(0, -1);
  const shell = {
    x: cells.x - left,
    y: cells.y - top,
    width: cells.width + left + grow(1, 0),
    height: cells.height + top + grow(0, 1),
  };
  return grown(shell, SIZES.rim);
}

export interface CutCorner {
  /** The shell with one corner cut. */
  readonly outline: readonly Point[];
  /** The cut-off corner. */
  readonly pinOne: readonly [Point, Point, Point];
}

/** The corner of the shell nearest to the first position, cut off. */
export function cutCorner(shell: Rect, grid: OrientedGrid): CutCorner {
  const first = grid.positions[0];
  const right = first !== undefined && first.col > (grid.cols - 1) / 2;
  const below = first !== undefined && first.row > (grid.rows - 1) / 2;
  const cut = 0.38 * Math.min(grid.pitchX, grid.pitchY);
  const corner = {
    x: shell.x + (right ? shell.width : 0),
    y: shell.y + (below ? shell.height : 0),
  };
  const beside = { x: corner.x + (right ? -cut : cut), y: corner.y };
  const under = { x: corner.x, y: corner.y + (below ? -cut : cut) };
  const clockwise = right === below ? [under, beside] : [beside, under];
  const index = right ? (below ? 2 : 1) : below ? 3 : 0;
  const outline = cornersOf(shell).flatMap((point, at) => (at === index ? clockwise : [point]));
  return { outline, pinOne: [corner, beside, under] };
}

/** Inner faces of the walls; the wall with the guide is broken by the slot in its middle. */
export function wallsOf(connector: Connector, shell: Rect, orientation: Orientation): readonly Line[] {
  const { shroud } = connector;
  if (!shroud) return [];
  const inner = grown(shell, -SIZES.wall * 0.55);
  return shroud.walls.flatMap((side): readonly Line[] => {
    const normal = oriented(orientation, NORMALS[side]);
    const face = cornersOf(inner).filter((corner) =>
      normal.x === 0
        ? Math.sign(corner.y - inner.y - inner.height / 2) === normal.y
        : Math.sign(corner.x - inner.x - inner.width / 2) === normal.x,
    );
    const [from, to] = face;
    if (!from || !to) return [];
    if (shroud.guide !== side) return [[from, to]];
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const slot = Math.min(4.5, length / 3);
    const part = (share: number): Point => ({
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share,
    });
    const begin = part(0.5 - slot / length / 2);
    const end = part(0.5 + slot / length / 2);
    const outside = (point: Point): Point => ({
      x: point.x + normal.x * SIZES.wall * 0.55,
      y: point.y + normal.y * SIZES.wall * 0.55,
    });
    return [
      [from, begin],
      [begin, outside(begin)],
      [end, outside(end)],
      [end, to],
    ];
  });
}
