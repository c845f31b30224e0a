import type { Mm } from '../base/units';
import type { BoardSheet } from '../document/board-sheet';
import type { Connector, Place } from '../document/connector';
import { boxAt, movedPlace } from './board-place';
import { type Box, connectorBox, type Point } from './geometry';

/** Room for the names round a connector, and the least that keeps two apart. */
const SPACES_MM: readonly Mm[] = [12, 3];
const STEP_MM: Mm = 5;
/** Where looking stops on a very large or very full board. */
const MOST_TRIES = 4_000;

/**
 * The place nearest to a point where a connector would stand clear of all others and inside the edge, turned
 * as it is. Below everything where the board has no such place; the person moves it from there.
 */
export function freePlace(board: BoardSheet, connector: Connector, near: Point): Place {
  const boxes = board.connectors.filter(({ id }) => id !== connector.id).map(connectorBox);
  const spots = spotsOf(board, near);
  for (const space of SPACES_MM)
    for (const { xMm, yMm } of spots) {
      const place = { ...connector.place, xMm, yMm };
      const box = boxAt(connector, place);
      if (isInside(box, board) && !boxes.some((other) => nearerThan(box, other, space))) return place;
    }
  const lowest = boxes.reduce((low, { bottomMm }) => Math.max(low, bottomMm), 0);
  return movedPlace({ ...connector.place, xMm: near.xMm, yMm: Math.round(lowest) + 14 }, 0, 0);
}

/** Points of a grid through the given one, the nearest first. */
function spotsOf({ outline }: BoardSheet, near: Point): readonly Point[] {
  const along = (from: Mm, to: Mm) => {
    const first = from - Math.floor(from / STEP_MM) * STEP_MM;
    return Array.from({ length: Math.ceil((to - first) / STEP_MM) }, (_, at) => first + at * STEP_MM);
  };
  const across = along(near.xMm, outline.widthMm);
  const down = along(near.yMm, outline.depthMm);
  const away = ({ xMm, yMm }: Point) => Math.hypot(xMm - near.xMm, yMm - near.yMm);
  return down
    .flatMap((yMm) => across.map((xMm): Point => ({ xMm: hundredths(xMm), yMm: hundredths(yMm) })))
    .sort((a, b) => away(a) - away(b))
    .slice(0, MOST_TRIES);
}

function isInside({ leftMm, topMm, rightMm, bottomMm }: Box, { outline }: BoardSheet): boolean {
  return leftMm >= 0 && topMm >= 0 && rightMm <= outline.widthMm && bottomMm <= outline.depthMm;
}

function nearerThan(a: Box, b: Box, space: Mm): boolean {
  return (
    a.leftMm - space < b.rightMm &&
    b.leftMm - space < a.rightMm &&
    a.topMm - space < b.bottomMm &&
    b.topMm - space < a.bottomMm
  );
}

function hundredths(value: Mm): Mm {
  return Math.round(value * 100) / 100;
}
