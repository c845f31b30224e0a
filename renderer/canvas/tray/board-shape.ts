import type { Mm } from '../../../boards/base/units';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { BoardPlace } from '../../../boards/document/tray';
import { type Point, type Rect, rectRound } from '../../../boards/drawing/geometry';
import type { HoleShape } from '../../../boards/drawing/holes';
import { connectorBox } from '../../../boards/fit/geometry';
import { onTray } from '../../../boards/routing/case/board-on-tray';
import { fromSide, type Look } from './tray-look';

/** A connector of the board where it lies on the tray. */
interface ConnectorShape {
  readonly connector: string;
  readonly name: string;
  readonly box: Rect;
}

/** The board on the tray: its edge, the holes for its screws, and what stands on it. */
export interface BoardShape {
  /** It lies on the front. */
  readonly near: boolean;
  readonly name: string;
  readonly outline: Rect;
  /** The edge with the sockets for the rear panel, as a line. */
  readonly rear: readonly [Point, Point];
  readonly holes: readonly HoleShape[];
  readonly connectors: readonly ConnectorShape[];
}

/** What a hole is drawn as where the sheet does not say how wide it is. */
const USUAL_RADIUS: Mm = 1.5;

export function boardShape(board: BoardSheet, place: BoardPlace, look: Look): BoardShape {
  const { outline } = board;
  const { widthMm, depthMm, holes = [] } = outline;
  const there = (xMm: Mm, yMm: Mm): Point => {
    const at = onTray({ xMm, yMm }, place, outline);
    return fromSide(look, { x: at.xMm, y: at.yMm });
  };
  return {
    near: look.side === 'front',
    name: board.name,
    outline: rectRound([there(0, 0), there(widthMm, depthMm)]),
    rear: rearOf(board, there),
    holes: holes.map(({ id, label = '', xMm, yMm, diameterMm }) => ({
      hole: id,
      label,
      centre: there(xMm, yMm),
      radius: diameterMm === undefined ? USUAL_RADIUS : diameterMm / 2,
    })),
    connectors: board.connectors.map((connector) => {
      const { leftMm, topMm, rightMm, bottomMm } = connectorBox(connector);
      return {
        connector: connector.id,
        name: connector.print || connector.title,
        box: rectRound([there(leftMm, topMm), there(rightMm, bottomMm)]),
      };
    }),
  };
}

function rearOf(
  { outline: { widthMm, depthMm, rear = 'top' } }: BoardSheet,
  there: (xMm: Mm, yMm: Mm) => Point,
): BoardShape['rear'] {
  switch (rear) {
    case 'top':
      return [there(0, 0), there(widthMm, 0)];
    case 'right':
      return [there(widthMm, 0), there(widthMm, depthMm)];
    case 'bottom':
      return [there(0, depthMm), there(widthMm, depthMm)];
    case 'left':
      return [there(0, 0), there(0, depthMm)];
  }
}
