import type { Mm } from '../../../boards/base/units';
import type { Tray } from '../../../boards/document/tray';
import { trayPlaces } from '../../../boards/document/tray-places';
import type { Point, Rect } from '../../../boards/drawing/geometry';
import { type Guide, guidesBetween, type Level, type Levels, levelsOf, nearestPull } from '../plan/snap';
import { hundredths, rectOfPlace } from './drafted';

/** What is dragged stands on whole millimetres where it is level with nothing. */
const STEP_MM: Mm = 1;

/**
 * Where a dragged rectangle or point of the tray comes to stand, as the sheet has it: level with another
 * place or the edge of the tray where that is no further than `reachMm`, otherwise on whole millimetres.
 *
 * @param id of what is dragged, which is never level with itself
 */
export function snappedOnTray(tray: Tray, id: string, rect: Rect, reachMm: Mm): Point {
  const own = levelsOf(boxOf(rect));
  const others = levelsBeside(tray, id);
  const [dx, dy] = (['x', 'y'] as const).map((axis) => nearestPull(own[axis], others[axis], reachMm));
  return {
    x: hundredths(dx === undefined ? onStep(rect.x) : rect.x + dx),
    y: hundredths(dy === undefined ? onStep(rect.y) : rect.y + dy),
  };
}

/** The same for one corner or side of a rectangle that is made larger. */
export function snappedPoint(tray: Tray, id: string, point: Point, reachMm: Mm): Point {
  return snappedOnTray(tray, id, { ...point, width: 0, height: 0 }, reachMm);
}

/** Every line along which a rectangle of the tray stands level with other places or the edge. */
export function guidesOnTray(tray: Tray, id: string, rect: Rect): readonly Guide[] {
  return guidesBetween(levelsOf(boxOf(rect)), levelsBeside(tray, id));
}

function onStep(mm: Mm): Mm {
  return Math.round(mm / STEP_MM) * STEP_MM;
}

function boxOf({ x, y, width, height }: Rect) {
  return { leftMm: x, topMm: y, rightMm: x + width, bottomMm: y + height };
}

function levelsBeside(tray: Tray, id: string): Levels {
  const { widthMm, heightMm } = tray;
  const boxes = trayPlaces(tray).flatMap((each) => {
    const rect = each.place.id === id ? undefined : rectOfPlace(each);
    return rect === undefined ? [] : [levelsOf(boxOf(rect))];
  });
  const edge = (atMm: Mm, toMm: Mm): Level => ({ atMm, fromMm: 0, toMm });
  return {
    x: [...boxes.flatMap(({ x }) => x), edge(0, heightMm), edge(widthMm, heightMm)],
    y: [...boxes.flatMap(({ y }) => y), edge(0, widthMm), edge(heightMm, widthMm)],
  };
}
