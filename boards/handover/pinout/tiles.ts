import type { Mm } from '../../base/units';
import type { Block } from '../../drawing/block';
import type { Rect } from '../../drawing/geometry';

/** A part of a block that fits its room. */
export interface Tile {
  /** The cells that belong to it, endless where the block ends. */
  readonly cut: Rect;
  /** All that is to be seen of it. */
  readonly view: Rect;
}

/** Beyond everything that belongs to a block. */
const FAR = 1e4;

/** The block in parts that fit a room, cut between pins, each part about as large as the others. */
export function tilesOf(block: Block, room: { readonly width: Mm; readonly height: Mm }): readonly Tile[] {
  const { grid, bounds } = block;
  const across = runs(grid.cols, grid.pitchX, bounds.width, room.width);
  const down = runs(grid.rows, grid.pitchY, bounds.height, room.height);
  const left = grid.origin.x - grid.pitchX / 2;
  const top = grid.origin.y - grid.pitchY / 2;
  return down.flatMap(([firstRow, rows]) =>
    across.map(([firstCol, cols]): Tile => {
      const cut = {
        ...spanX(left, grid.pitchX, firstCol, cols, grid.cols),
        ...spanY(top, grid.pitchY, firstRow, rows, grid.rows),
      };
      return { cut, view: within(cut, bounds) };
    }),
  );
}

/** "From the first, so many": as few runs as the room allows. What stands outside the cells counts once. */
function runs(
  count: number,
  pitch: Mm,
  whole: Mm,
  room: Mm,
): readonly (readonly [first: number, many: number])[] {
  if (whole <= room) return [[0, count]];
  const outside = whole - count * pitch;
  const most = Math.max(1, Math.floor((room - outside) / pitch + 1e-9));
  const parts = Math.ceil(count / most);
  const many = Math.ceil(count / parts);
  return Array.from({ length: Math.ceil(count / many) }, (_, part) => {
    const first = part * many;
    return [first, Math.min(many, count - first)] as const;
  });
}

function spanX(start: Mm, pitch: Mm, first: number, many: number, all: number) {
  const { from, to } = span(start, pitch, first, many, all);
  return { x: from, width: to - from };
}

function spanY(start: Mm, pitch: Mm, first: number, many: number, all: number) {
  const { from, to } = span(start, pitch, first, many, all);
  return { y: from, height: to - from };
}

function span(start: Mm, pitch: Mm, first: number, many: number, all: number) {
  return {
    from: first === 0 ? -FAR : start + first * pitch,
    to: first + many === all ? FAR : start + (first + many) * pitch,
  };
}

function within(cut: Rect, bounds: Rect): Rect {
  const x = Math.max(cut.x, bounds.x);
  const y = Math.max(cut.y, bounds.y);
  return {
    x,
    y,
    width: Math.min(cut.x + cut.width, bounds.x + bounds.width) - x,
    height: Math.min(cut.y + cut.height, bounds.y + bounds.height) - y,
  };
}
