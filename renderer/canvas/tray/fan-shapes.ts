import type { Mm } from '../../../boards/base/units';
import type { Side } from '../../../boards/document/connector';
import { placeName } from '../../../boards/document/place-names';
import type { FanPlace, Tray } from '../../../boards/document/tray';
import type { Point, Rect } from '../../../boards/drawing/geometry';
import { directionOf } from '../../../boards/routing/case/airflow';
import { type Area, fromSide, type Look, rectFromSide } from './tray-look';

/**
 * A fan outside the edge of the tray that its wall stands on. A sheet says only which wall: fans of one wall
 * are spread along it in the order of the sheet.
 */
export interface FanShape {
  readonly id: string;
  readonly name: string;
  readonly near: true;
  readonly wall: FanPlace['wall'];
  readonly box: Rect;
  /** From where to where it blows; null where nobody has looked. */
  readonly blows: readonly [from: Point, to: Point] | null;
}

/** How thick a fan is drawn, how far from the tray, and how long at most. */
const THICK: Mm = 18;
const AWAY: Mm = 8;
const LONGEST: Mm = 120;
/** Of its share of the wall. */
const LENGTH_SHARE = 0.8;

/** Where fans of the side panel are shown: beyond those of the bottom, for the panel covers the whole tray. */
const PANEL_AWAY: Mm = AWAY + THICK + 12;

/**
 * The edge of the tray that a wall of the case stands on, seen from the front. A case stands with its rear on
 * the left where its board does not say that it is on the right.
 */
export function edgeOfWall(wall: FanPlace['wall'], rear: Side | undefined): Side {
  const behind = rear === 'right' ? 'right' : 'left';
  switch (wall) {
    case 'top':
      return 'top';
    case 'bottom':
    case 'side':
      return 'bottom';
    case 'rear':
      return behind;
    case 'front':
      return behind === 'left' ? 'right' : 'left';
  }
}

export function fanShapes(tray: Tray, look: Look): readonly FanShape[] {
  const { fans = [], board } = tray;
  return fans.map((fan) => {
    const ofWall = fans.filter(({ wall }) => wall === fan.wall);
    const edge = edgeOfWall(fan.wall, board?.rear);
    const away = fan.wall === 'side' ? PANEL_AWAY : AWAY;
    const area = spread(tray, edge, ofWall.indexOf(fan), ofWall.length, away);
    return {
      id: fan.id,
      name: placeName(tray, fan.id),
      near: true,
      wall: fan.wall,
      box: rectFromSide(look, area),
      blows: blows(fan, area, edge, look),
    };
  });
}

/** The place of one of several fans along an edge. */
function spread({ widthMm, heightMm }: Tray, edge: Side, at: number, count: number, away: Mm): Area {
  const along = edge === 'top' || edge === 'bottom' ? widthMm : heightMm;
  const length = Math.min(LONGEST, (LENGTH_SHARE * along) / count);
  const from = ((at + 0.5) * along) / count - length / 2;
  switch (edge) {
    case 'top':
      return { xMm: from, yMm: -away - THICK, widthMm: length, heightMm: THICK };
    case 'bottom':
      return { xMm: from, yMm: heightMm + away, widthMm: length, heightMm: THICK };
    case 'left':
      return { xMm: -away - THICK, yMm: from, widthMm: THICK, heightMm: length };
    case 'right':
      return { xMm: widthMm + away, yMm: from, widthMm: THICK, heightMm: length };
  }
}

/** Across the fan, from outside the case inward or the other way. */
function blows(
  fan: FanPlace,
  { xMm, yMm, widthMm, heightMm }: Area,
  edge: Side,
  look: Look,
): FanShape['blows'] {
  const direction = directionOf(fan);
  if (direction === undefined) return null;
  const [x, y] = [xMm + widthMm / 2, yMm + heightMm / 2];
  const reach = THICK * 0.85;
  const outward: Readonly<Record<Side, Point>> = {
    top: { x, y: y - reach },
    right: { x: x + reach, y },
    bottom: { x, y: y + reach },
    left: { x: x - reach, y },
  };
  const outside = fromSide(look, outward[edge]);
  const inside = fromSide(look, { x: 2 * x - outward[edge].x, y: 2 * y - outward[edge].y });
  return direction === 'intake' ? [outside, inside] : [inside, outside];
}
