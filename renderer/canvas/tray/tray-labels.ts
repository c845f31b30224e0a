import { centreOf, grown, type Point, type Rect, rectAbout } from '../../../boards/drawing/geometry';
import { shortened } from '../../../boards/drawing/lines-of-text';
import { measureByTable } from '../../../boards/drawing/measure';
import { spotsAbout } from '../drawing/far-labels';
import { type RectBuckets, rectBuckets } from '../scene/rect-buckets';
import { POINT_RADIUS, STANDOFF_RADIUS, type TrayScene } from './tray-scene';

/** A name on the map, in type of a fixed size on the screen. */
export interface TrayLabel {
  /** Of a place, or of a connector of the board. */
  readonly of: string;
  readonly text: string;
  readonly box: Rect;
  readonly sizeMm: number;
  /** Reads from bottom to top. */
  readonly upright: boolean;
  /** Of something on the side that is not looked at. */
  readonly near: boolean;
}

/** Of the page's base type size. */
const LABEL_SHARE = 0.87;
const LINE = 1.15;
const LONGEST = 26;
/** Signs of places are never drawn smaller than this, from the middle. */
export const LEAST_SIGN_PX = 5;

interface Named {
  readonly id: string;
  readonly name: string;
  readonly near: boolean;
  readonly about: Rect;
  /** Whether the name may stand inside it. */
  readonly inside: boolean;
}

interface Remembered {
  readonly scale: number;
  readonly typePx: number;
  readonly labels: readonly TrayLabel[];
}
const remembered = new WeakMap<TrayScene, Remembered>();

/** The names of a map at a scale; panning asks for the same ones again and again. */
export function trayLabelsOf(scene: TrayScene, scale: number, typePx: number): readonly TrayLabel[] {
  const known = remembered.get(scene);
  if (known?.scale === scale && known.typePx === typePx) return known.labels;
  const labels = trayLabels(scene, scale, typePx);
  remembered.set(scene, { scale, typePx, labels });
  return labels;
}

/**
 * Names beside what they name, or inside it where it is large; what is told first has the first choice.
 * None lies on another, on a hole of the board or on the sign of another place; where nothing is free a name
 * is left out until the map is nearer. The shelf has all of them.
 */
export function trayLabels(scene: TrayScene, scale: number, typePx: number): readonly TrayLabel[] {
  return laidOut(namedOn(scene), standing(scene, scale), scale, typePx);
}

/**
 * The names while something is on its way: only what moves has its name laid out anew, so that no other jumps
 * about. At rest all of them find their places again.
 *
 * @param resting the map without what is on its way
 */
export function labelsOnTheWay(
  resting: TrayScene,
  scene: TrayScene,
  scale: number,
  typePx: number,
): readonly TrayLabel[] {
  const before = new Map(namedOn(resting).map(({ id, about }) => [id, about]));
  const moved = namedOn(scene).filter(({ id, about }) => !sameRect(before.get(id), about));
  const ids = new Set(moved.map(({ id }) => id));
  const kept = trayLabelsOf(resting, scale, typePx).filter(({ of }) => !ids.has(of));
  const taken = standing(scene, scale);
  for (const { box } of kept) taken.add(box, LABEL);
  return [...kept, ...laidOut(moved, taken, scale, typePx)];
}

/** Each name at the first spot that is free. */
function laidOut(
  all: readonly Named[],
  taken: RectBuckets<string | symbol>,
  scale: number,
  typePx: number,
): readonly TrayLabel[] {
  const sizeMm = (LABEL_SHARE * typePx) / scale;
  return all.flatMap((named): readonly TrayLabel[] => {
    const text = cut(named.name);
    const width = measureByTable(text, sizeMm, 'text');
    const own = { of: named.id, sizeMm, near: named.near };
    for (const { text: shown, box, upright } of spotsFor(named, text, width, sizeMm)) {
      if (taken.isTaken(box, (each) => each !== named.id || !named.inside)) continue;
      taken.add(box, LABEL);
      return [{ ...own, text: shown, box, upright }];
    }
    return [];
  });
}

const LABEL = Symbol('a name');
const HOLE = Symbol('a hole of the board');

/** What no name may lie on: ids of places, connectors, holes. Areas that names stand in are told by their id. */
function standing(
  { points, standoffs, openings, bays, supply, fans, board }: TrayScene,
  scale: number,
): RectBuckets<string | symbol> {
  const taken = rectBuckets<string | symbol>();
  const round = (id: string | symbol, at: Point, radius: number) => {
    const side = 2 * Math.max(radius, LEAST_SIGN_PX / scale);
    taken.add(rectAbout(at, side, side), id);
  };
  for (const { id, at } of points) round(id, at, POINT_RADIUS);
  for (const { id, at } of standoffs) round(id, at, STANDOFF_RADIUS);
  for (const { centre, radius } of board?.holes ?? [])
    taken.add(rectAbout(centre, 2 * radius, 2 * radius), HOLE);
  for (const { id, box } of [...openings, ...bays, ...fans, ...(supply === null ? [] : [supply])])
    taken.add(box, id);
  if (board?.near) for (const { connector, box } of board.connectors) taken.add(box, connector);
  return taken;
}

/** Everything with a name, the most wanted first. Of a board on the other side only its edge is drawn. */
function namedOn({ points, openings, bays, supply, fans, board }: TrayScene): readonly Named[] {
  const area =
    (inside: boolean) =>
    ({ id, name, near, box }: { id: string; name: string; near: boolean; box: Rect }): Named => ({
      id,
      name,
      near,
      about: box,
      inside,
    });
  return [
    ...[...(supply === null ? [] : [supply]), ...bays].map(area(true)),
    ...openings.map(area(false)),
    ...fans.map(area(true)),
    ...points.map(({ id, name, near, at }) => ({
      id,
      name,
      near,
      about: rectAbout(at, 2 * POINT_RADIUS, 2 * POINT_RADIUS),
      inside: false,
    })),
    ...(board?.near ? board.connectors : []).map(({ connector, name, box }) => ({
      id: connector,
      name,
      near: true,
      about: box,
      inside: false,
    })),
  ];
}

interface Spot {
  readonly text: string;
  readonly box: Rect;
  readonly upright: boolean;
}

function* spotsFor({ about, inside }: Named, text: string, width: number, sizeMm: number): Generator<Spot> {
  const height = sizeMm * LINE;
  if (inside) {
    const room = grown(about, -sizeMm * 0.1);
    if (room.height >= height && room.width >= Math.min(width, 6 * sizeMm)) {
      const shown = shortened(text, room.width, sizeMm, 'text', measureByTable);
      const fits = measureByTable(shown, sizeMm, 'text');
      yield { text: shown, box: rectAbout(centreOf(about), fits, height), upright: false };
    }
    if (room.width >= height && room.height >= width)
      yield { text, box: rectAbout(centreOf(about), height, width), upright: true };
  }
  for (const box of spotsAbout(about, width, height)) yield { text, box, upright: false };
}

function sameRect(one: Rect | undefined, other: Rect): boolean {
  return one?.x === other.x && one.y === other.y && one.width === other.width && one.height === other.height;
}

/** A name as long as a sentence would run over the whole tray. */
function cut(name: string): string {
  const letters = [...name];
  return letters.length <= LONGEST
    ? name
    : `${letters
        .slice(0, LONGEST - 1)
        .join('')
        .trimEnd()}…`;
}
