import type { Turn } from '../../../../boards/base/units';
import type { Side } from '../../../../boards/document/connector';
import type { Corner } from '../../../../boards/document/grid';
import { followedBy, type Orientation, oriented, turned } from '../../../../boards/drawing/orientation';

const NORMALS = {
  top: { x: 0, y: -1 },
  right: { x: 1, y: 0 },
  bottom: { x: 0, y: 1 },
  left: { x: -1, y: 0 },
} as const satisfies Record<Side, { readonly x: number; readonly y: number }>;

/** The side on which a side of the unturned connector is drawn. */
export function drawnSide(side: Side, turn: Turn, view: Orientation): Side {
  const { x, y } = oriented(followedBy(turned(turn), view), NORMALS[side]);
  if (x === 0) return y < 0 ? 'top' : 'bottom';
  return x < 0 ? 'left' : 'right';
}

const OUTWARD: Readonly<Record<Corner, { readonly x: number; readonly y: number }>> = {
  'top-left': { x: -1, y: -1 },
  'top-right': { x: 1, y: -1 },
  'bottom-left': { x: -1, y: 1 },
  'bottom-right': { x: 1, y: 1 },
};

/** The corner in which a corner of the unturned connector is drawn. */
export function drawnCorner(corner: Corner, turn: Turn, view: Orientation): Corner {
  const { x, y } = oriented(followedBy(turned(turn), view), OUTWARD[corner]);
  return `${y < 0 ? 'top' : 'bottom'}-${x < 0 ? 'left' : 'right'}`;
}
