import type { Mm } from '../../../boards/base/units';
import type { Tray, TraySide } from '../../../boards/document/tray';
import { centreOf, type Line, type Point, type Rect, rectRound } from '../../../boards/drawing/geometry';
import { fromSide, type Look, rectOf } from './tray-look';

/** A path as a straight line between its places: only its length is measured, not how it winds. */
export interface PathShape {
  readonly id: string;
  readonly side: TraySide;
  /** On the side looked at. */
  readonly near: boolean;
  readonly line: Line;
  readonly box: Rect;
}

/** Between the lines of paths that join the same two places. */
const ASIDE: Mm = 5;

export function pathShapes(tray: Tray, look: Look): readonly PathShape[] {
  const beside = new Map<string, string[]>();
  for (const { id, from, to } of tray.paths) {
    const pair = [from, to].toSorted().join(' ');
    beside.set(pair, [...(beside.get(pair) ?? []), id]);
  }
  const anchors = anchorsOf(tray);
  const seen = ({ x, y }: Point) => fromSide(look, { x, y });
  return tray.paths.flatMap((path): readonly PathShape[] => {
    const [one, other] = [anchors.get(path.from), anchors.get(path.to)];
    if (one === undefined || other === undefined) return [];
    const sorted = path.from < path.to;
    const ids = beside.get([path.from, path.to].toSorted().join(' ')) ?? [];
    const step = (ids.indexOf(path.id) - (ids.length - 1) / 2) * ASIDE;
    const [start, end] = aside(
      [edgeToward(one, other.middle), edgeToward(other, one.middle)],
      sorted ? step : -step,
    );
    const line: Line = [seen(start), seen(end)];
    return [
      {
        id: path.id,
        side: path.side,
        near: path.side === look.side,
        line,
        box: rectRound(line),
      },
    ];
  });
}

/** Where lines to a place end: in the middle of a point or an opening, at the edge of a bay or the supply. */
interface Anchor {
  readonly middle: Point;
  readonly edge: Rect | null;
}

/** As the sheet has them. */
function anchorsOf({ points, openings, bays, supply }: Tray): ReadonlyMap<string, Anchor> {
  const anchors = new Map<string, Anchor>();
  for (const { id, xMm, yMm } of points) anchors.set(id, { middle: { x: xMm, y: yMm }, edge: null });
  for (const opening of openings) anchors.set(opening.id, { middle: centreOf(rectOf(opening)), edge: null });
  for (const area of [...bays, ...(supply === undefined ? [] : [supply])]) {
    const box = rectOf(area);
    anchors.set(area.id, { middle: centreOf(box), edge: box });
  }
  return anchors;
}

/** Where the line from the middle of a place to some point leaves it. */
function edgeToward({ middle, edge }: Anchor, to: Point): Point {
  if (edge === null) return middle;
  const [dx, dy] = [to.x - middle.x, to.y - middle.y];
  const share = Math.min(
    dx === 0 ? 1 : edge.width / 2 / Math.abs(dx),
    dy === 0 ? 1 : edge.height / 2 / Math.abs(dy),
    1,
  );
  return { x: middle.x + dx * share, y: middle.y + dy * share };
}

/** The line moved to its side. */
function aside([from, to]: Line, by: Mm): Line {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (by === 0 || length === 0) return [from, to];
  const [x, y] = [(-(to.y - from.y) * by) / length, ((to.x - from.x) * by) / length];
  return [
    { x: from.x + x, y: from.y + y },
    { x: to.x + x, y: to.y + y },
  ];
}
