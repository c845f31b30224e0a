import type { Mm } from '../../../boards/base/units';
import type { PlugRef } from '../../../boards/document/lookup';
import { type Line, type Point, type Rect, rectAbout } from '../../../boards/drawing/geometry';
import type { TrayPart } from '../../store/session';
import { type RectBuckets, rectBuckets } from '../scene/rect-buckets';
import { POINT_RADIUS, STANDOFF_RADIUS, type TrayScene } from './tray-scene';

/** What lies under a point of the map: something of the tray, or a connector of the board. */
export type TrayTarget =
  | { readonly kind: 'on-tray'; readonly part: TrayPart }
  | { readonly kind: 'connector'; readonly connector: string }
  | {
      /** A cable, by the plug at its far end. */
      readonly kind: 'plug';
      readonly plug: PlugRef;
      /** All that lie there with it. */
      readonly together: readonly PlugRef[];
      readonly path: string;
    };

/** Small signs and paths are met within `reach` of their edge, for a hand is not steady. */
export type TrayHits = (point: Point, reach: Mm) => TrayTarget | null;

/**
 * Points and standoffs lie on top, then openings, connectors and fans, then cables, then paths, then bays, the supply and
 * the board. Of points, standoffs, cables and paths the nearest is met, of areas the last in the sheet. The board is
 * met by its edge alone where it is on the other side.
 */
export function trayHits(scene: TrayScene): TrayHits {
  const { points, standoffs, openings, bays, supply, fans, paths, cables, board } = scene;
  const part = (kind: TrayPart['kind'], id: string): TrayTarget => ({ kind: 'on-tray', part: { kind, id } });
  const round = rectBuckets<Round>();
  for (const { id, at } of standoffs) addRound(round, at, STANDOFF_RADIUS, part('standoff', id));
  for (const { id, at } of points) addRound(round, at, POINT_RADIUS, part('point', id));
  const upper = rectBuckets<TrayTarget>();
  for (const { id, box } of fans) upper.add(box, part('fan', id));
  for (const { connector, box } of board?.near ? board.connectors : [])
    upper.add(box, { kind: 'connector', connector });
  for (const { id, box } of openings) upper.add(box, part('opening', id));
  // Not in buckets: long lines aslant would be in nearly all of them, and looking at each costs less.
  const lines = paths.map(({ id, line }): Drawn => ({ line, half: 0, target: part('path', id) }));
  const laid = cables.flatMap(({ line, widthMm, runs, path }): readonly Drawn[] => {
    const [plug] = runs;
    if (plug === undefined) return [];
    return [{ line, half: widthMm / 2, target: { kind: 'plug', plug, together: runs, path } }];
  });
  const lower = rectBuckets<TrayTarget>();
  if (board !== null) lower.add(board.outline, part('board', 'board'));
  for (const { id, box } of bays) lower.add(box, part('bay', id));
  if (supply !== null) lower.add(supply.box, part('supply', supply.id));
  return (point, reach) =>
    nearest(
      round.touching(reachAbout(point, reach)),
      reach,
      ({ at, radius }) => Math.hypot(at.x - point.x, at.y - point.y) - radius,
    ) ??
    upper.at(point).at(-1) ??
    nearest(laid, reach, ({ line, half }) => awayFrom(line, point) - half) ??
    nearest(lines, reach, ({ line }) => awayFrom(line, point)) ??
    lower.at(point).at(-1) ??
    null;
}

interface Round {
  readonly at: Point;
  readonly radius: Mm;
  readonly target: TrayTarget;
}

interface Drawn {
  readonly line: Line;
  /** Of its width. */
  readonly half: Mm;
  readonly target: TrayTarget;
}

function addRound(round: RectBuckets<Round>, at: Point, radius: Mm, target: TrayTarget): void {
  round.add(rectAbout(at, 2 * radius, 2 * radius), { at, radius, target });
}

/** The nearest within reach; of equally near ones the later. */
function nearest<T extends { readonly target: TrayTarget }>(
  shapes: readonly T[],
  reach: Mm,
  away: (shape: T) => Mm,
): TrayTarget | undefined {
  let met: { readonly target: TrayTarget; readonly away: Mm } | undefined;
  for (const shape of shapes) {
    const distance = away(shape);
    if (distance <= reach && (met === undefined || distance <= met.away))
      met = { target: shape.target, away: distance };
  }
  return met?.target;
}

function reachAbout(point: Point, reach: Mm): Rect {
  return rectAbout(point, 2 * reach, 2 * reach);
}

/** From the nearest point of a piece of a line. */
function awayFrom([from, to]: Line, point: Point): Mm {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = dx ** 2 + dy ** 2;
  const along = length === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / length;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - from.x - share * dx, point.y - from.y - share * dy);
}
