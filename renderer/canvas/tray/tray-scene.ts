import type { Mm } from '../../../boards/base/units';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Lead } from '../../../boards/document/lead';
import { placeName, sidesOfPoints } from '../../../boards/document/place-names';
import type { Opening, Tray, TraySide } from '../../../boards/document/tray';
import { centreOf, type Point, type Rect, rectAbout, rectRoundAll } from '../../../boards/drawing/geometry';
import type { AsLaid } from '../../../boards/routing/laid/as-laid';
import { type BoardShape, boardShape } from './board-shape';
import { type StretchShape, stretchShapes } from './cable-shapes';
import { type FanShape, fanShapes } from './fan-shapes';
import { type PathShape, pathShapes } from './path-shapes';
import { fromSide, type Look, rectFromSide } from './tray-look';

/** What every place of the map has: what it is, what it is called, and whether it is on the side looked at. */
interface Placed {
  readonly id: string;
  readonly name: string;
  readonly near: boolean;
}

export interface PointShape extends Placed {
  readonly kind: Tray['points'][number]['kind'];
  readonly at: Point;
}

export interface OpeningShape extends Placed {
  readonly box: Rect;
  readonly round: boolean;
  readonly edge: Opening['edge'];
}

/** A bay, or the supply unit. */
export interface AreaShape extends Placed {
  readonly box: Rect;
}

export interface StandoffShape extends Placed {
  readonly at: Point;
  readonly fixed: boolean;
}

/** The tray as plain shapes, in millimetres from its top left corner as it is looked at. Nothing depends on the zoom. */
export interface TrayScene {
  readonly look: Look;
  readonly sheet: Rect;
  /** Everything that is drawn. */
  readonly bounds: Rect;
  readonly points: readonly PointShape[];
  readonly openings: readonly OpeningShape[];
  readonly bays: readonly AreaShape[];
  readonly supply: AreaShape | null;
  readonly standoffs: readonly StandoffShape[];
  readonly fans: readonly FanShape[];
  readonly paths: readonly PathShape[];
  /** Cables that have a way, where any are shown. */
  readonly cables: readonly StretchShape[];
  readonly board: BoardShape | null;
}

/** How large a point and a standoff are drawn, from the middle. */
export const POINT_RADIUS: Mm = 4;
export const STANDOFF_RADIUS: Mm = 3;

/** The cables of a build by their chosen ways, and which of them are shown. */
export interface ShownCables {
  readonly laid: AsLaid;
  readonly isShown: (lead: Lead) => boolean;
}

/** Draws up a tray with the board at its place and the cables that lie in it, seen from one of its sides. */
export function traySceneOf(
  tray: Tray,
  board: BoardSheet,
  side: TraySide,
  cables: ShownCables | null = null,
): TrayScene {
  const look: Look = { side, widthMm: tray.widthMm };
  const name = (id: string) => placeName(tray, id);
  const sides = sidesOfPoints(tray);
  const joined = sidesOfAreas(tray);
  const area = (each: Tray['bays'][number]): AreaShape => ({
    id: each.id,
    name: name(each.id),
    near: joined.get(each.id)?.has(side) ?? true,
    box: rectFromSide(look, each),
  });
  const sheet: Rect = { x: 0, y: 0, width: tray.widthMm, height: tray.heightMm };
  const points = tray.points.map(
    ({ id, kind, xMm, yMm }): PointShape => ({
      id,
      name: name(id),
      near: (sides.get(id) ?? side) === side,
      kind,
      at: fromSide(look, { x: xMm, y: yMm }),
    }),
  );
  const openings = tray.openings.map(
    (each): OpeningShape => ({
      id: each.id,
      name: name(each.id),
      near: true,
      box: rectFromSide(look, each),
      round: each.round ?? false,
      edge: each.edge,
    }),
  );
  const bays = tray.bays.map(area);
  const supply = tray.supply === undefined ? null : area(tray.supply);
  const standoffs = (tray.standoffs ?? []).map(
    ({ id, fixed = false, xMm, yMm }): StandoffShape => ({
      id,
      name: name(id),
      near: side === 'front',
      at: fromSide(look, { x: xMm, y: yMm }),
      fixed,
    }),
  );
  const fans = fanShapes(tray, look);
  const shown = tray.board === undefined ? null : boardShape(board, tray.board, look);
  return {
    look,
    sheet,
    bounds:
      rectRoundAll([
        sheet,
        ...(shown === null ? [] : [shown.outline]),
        ...fans.map(({ box }) => box),
        ...[...openings, ...bays, ...(supply === null ? [] : [supply])].map(({ box }) => box),
        ...points.map(({ at }) => rectAbout(at, 2 * POINT_RADIUS, 2 * POINT_RADIUS)),
        ...standoffs.map(({ at }) => rectAbout(at, 2 * STANDOFF_RADIUS, 2 * STANDOFF_RADIUS)),
      ]) ?? sheet,
    points,
    openings,
    bays,
    supply,
    standoffs,
    fans,
    paths: pathShapes(tray, look),
    cables: cables === null ? [] : stretchShapes(cables.laid, tray, look, cables.isShown),
    board: shown,
  };
}

/** The middle of a place as it is drawn; undefined for one that is not on the map. */
export function middleOf(scene: TrayScene, id: string): Point | undefined {
  const round = [...scene.points, ...scene.standoffs].find((each) => each.id === id);
  if (round !== undefined) return round.at;
  const box = boxOf(scene, id);
  return box && centreOf(box);
}

/** The rectangle of anything on the map by its id, a path by its ends; undefined where it is not there. */
export function boxOf(scene: TrayScene, id: string): Rect | undefined {
  const { points, standoffs, openings, bays, supply, fans, paths } = scene;
  const point = points.find((each) => each.id === id);
  if (point !== undefined) return rectAbout(point.at, 2 * POINT_RADIUS, 2 * POINT_RADIUS);
  const standoff = standoffs.find((each) => each.id === id);
  if (standoff !== undefined) return rectAbout(standoff.at, 2 * STANDOFF_RADIUS, 2 * STANDOFF_RADIUS);
  const areas = [...openings, ...bays, ...(supply === null ? [] : [supply]), ...fans];
  return areas.find((each) => each.id === id)?.box ?? paths.find((each) => each.id === id)?.box;
}

/** The sides from which paths come to each opening, bay and supply; nothing where none does. */
function sidesOfAreas({ paths }: Tray): ReadonlyMap<string, ReadonlySet<TraySide>> {
  const sides = new Map<string, Set<TraySide>>();
  for (const { from, to, side } of paths)
    for (const id of [from, to]) {
      const met = sides.get(id);
      if (met) met.add(side);
      else sides.set(id, new Set([side]));
    }
  return sides;
}
