import type { Mm } from '../base/units';
import type { Connector } from '../document/connector';
import { type Cell, rowPitchOf } from '../document/grid';
import { gridIndex } from '../document/numbering';
import type { Point } from './geometry';
import { followedBy, type Orientation, oriented, turned } from './orientation';

/** One position of a connector as it lies before the person. */
export interface Position {
  readonly label: string;
  readonly centre: Point;
  /** Counted from the top and the left of the drawing. */
  readonly row: number;
  readonly col: number;
}

/** A connector's grid in the drawing's own axes. */
export interface OrientedGrid {
  readonly rows: number;
  readonly cols: number;
  readonly pitchX: Mm;
  readonly pitchY: Mm;
  /** Centre of the drawing's own row 0, column 0. */
  readonly origin: Point;
  /** Connector axes to drawing axes. */
  readonly orientation: Orientation;
  readonly positions: readonly Position[];
  /** Where a connector's cell lies, also outside the grid. */
  readonly place: (cell: Cell) => { readonly row: number; readonly col: number; readonly centre: Point };
}

/** The connector's own turn and the view's orientation, applied. */
export function orientedGrid(connector: Connector, view: Orientation): OrientedGrid {
  const { grid, place } = connector;
  const orientation = followedBy(turned(place.turn), view);
  const base = oriented(view, { x: place.xMm, y: place.yMm });
  const pitch = oriented(orientation, { x: grid.pitchMm, y: rowPitchOf(grid) });
  const last = oriented(orientation, { x: grid.cols - 1, y: grid.rows - 1 });
  const pitchX = Math.abs(pitch.x);
  const pitchY = Math.abs(pitch.y);
  const left = Math.min(0, last.x);
  const top = Math.min(0, last.y);
  const origin = { x: base.x + left * pitchX, y: base.y + top * pitchY };
  const placeOf = ([r, c]: Cell) => {
    const steps = oriented(orientation, { x: c, y: r });
    return {
      row: steps.y - top,
      col: steps.x - left,
      centre: { x: base.x + steps.x * pitchX, y: base.y + steps.y * pitchY },
    };
  };
  return {
    rows: Math.abs(last.y) + 1,
    cols: Math.abs(last.x) + 1,
    pitchX,
    pitchY,
    origin,
    orientation,
    positions: gridIndex(grid).positions.map(({ label, cell }) => ({ label, ...placeOf(cell) })),
    place: placeOf,
  };
}
