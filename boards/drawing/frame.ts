import type { Mm } from '../base/units';
import type { Point, Rect } from './geometry';

/** The two ways out of a block: up and down for a wide one, left and right for a tall one. */
export const WAYS_OUT = ['before', 'after'] as const;
export type WayOut = (typeof WAYS_OUT)[number];

/**
 * A block's own axes: `along` its longer side, `out` across it, where names and wires leave.
 * Layout is written once in these and serves wide and tall blocks alike.
 */
export interface Frame {
  readonly tall: boolean;
  readonly along: (point: Point) => Mm;
  readonly out: (point: Point) => Mm;
  readonly point: (along: Mm, out: Mm) => Point;
  readonly rect: (along: Span, out: Span) => Rect;
  readonly alongSpan: (rect: Rect) => Span;
  readonly outSpan: (rect: Rect) => Span;
}

export interface Span {
  readonly from: Mm;
  readonly to: Mm;
}

const WIDE: Frame = {
  tall: false,
  along: (point) => point.x,
  out: (point) => point.y,
  point: (along, out) => ({ x: along, y: out }),
  rect: (along, out) => ({
    x: along.from,
    y: out.from,
    width: along.to - along.from,
    height: out.to - out.from,
  }),
  alongSpan: (rect) => ({ from: rect.x, to: rect.x + rect.width }),
  outSpan: (rect) => ({ from: rect.y, to: rect.y + rect.height }),
};

const TALL: Frame = {
  tall: true,
  along: (point) => point.y,
  out: (point) => point.x,
  point: (along, out) => ({ x: out, y: along }),
  rect: (along, out) => WIDE.rect(out, along),
  alongSpan: WIDE.outSpan,
  outSpan: WIDE.alongSpan,
};

/** Tall when there are more rows than columns. */
export function frameOf(rows: number, cols: number): Frame {
  return rows > cols ? TALL : WIDE;
}

/** The span that begins at an edge and goes a length outward. */
export function outward(way: WayOut, edge: Mm, length: Mm): Span {
  return way === 'before' ? { from: edge - length, to: edge } : { from: edge, to: edge + length };
}

/** A distance further out on one way. */
export function further(way: WayOut, edge: Mm, distance: Mm): Mm {
  return way === 'before' ? edge - distance : edge + distance;
}
