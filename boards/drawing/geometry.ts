import type { Mm } from '../base/units';

/** All lengths are oriented millimetres: the drawing as it stands before the person. */
export interface Point {
  readonly x: Mm;
  readonly y: Mm;
}

export interface Rect {
  readonly x: Mm;
  readonly y: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

export type Line = readonly [Point, Point];

/** The smallest upright rectangle round some points. */
export function rectRound(points: readonly Point[]): Rect {
  const left = Math.min(...points.map((point) => point.x));
  const top = Math.min(...points.map((point) => point.y));
  const right = Math.max(...points.map((point) => point.x));
  const bottom = Math.max(...points.map((point) => point.y));
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** A rectangle of some size about its middle. */
export function rectAbout(centre: Point, width: Mm, height: Mm): Rect {
  return { x: centre.x - width / 2, y: centre.y - height / 2, width, height };
}

export function centreOf(rect: Rect): Point {
  return { x: rect.x + rect.width / 2, y: rect.y + rect.height / 2 };
}

export function cornersOf(rect: Rect): readonly [Point, Point, Point, Point] {
  const { x, y, width, height } = rect;
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

/** The rectangle round several; undefined when there is none. */
export function rectRoundAll(rects: readonly Rect[]): Rect | undefined {
  if (rects.length === 0) return undefined;
  return rectRound(
    rects.flatMap((rect) => [
      { x: rect.x, y: rect.y },
      { x: rect.x + rect.width, y: rect.y + rect.height },
    ]),
  );
}

/** Grown on all sides, or shrunk by a negative margin. */
export function grown(rect: Rect, marginX: Mm, marginY: Mm = marginX): Rect {
  return {
    x: rect.x - marginX,
    y: rect.y - marginY,
    width: rect.width + 2 * marginX,
    height: rect.height + 2 * marginY,
  };
}

/** Share some area; touching edges do not count. */
export function overlap(a: Rect, b: Rect): boolean {
  const slack = 1e-6;
  return (
    a.x + slack < b.x + b.width &&
    b.x + slack < a.x + a.width &&
    a.y + slack < b.y + b.height &&
    b.y + slack < a.y + a.height
  );
}

export function contains(rect: Rect, point: Point): boolean {
  return (
    point.x >= rect.x &&
    point.x <= rect.x + rect.width &&
    point.y >= rect.y &&
    point.y <= rect.y + rect.height
  );
}

/** The rectangles that an upright path of some width covers, one for each of its legs. */
export function legsOf(path: readonly Point[], width: Mm): readonly Rect[] {
  return path.slice(1).map((point, index) => grown(rectRound([path[index] ?? point, point]), width / 2));
}
