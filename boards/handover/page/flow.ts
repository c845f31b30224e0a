import type { Mm } from '../../base/units';
import type { Point, Rect } from '../../drawing/geometry';
import type { Drawn } from './page';

/** What is known of the whole once everything has its place: it is drawn only then. */
export interface Book {
  readonly pages: number;
  /** The page on which a mark stands, from 1; undefined for a mark that was never set. */
  readonly pageOf: (mark: string) => number | undefined;
}

/** A piece of some height that is never broken. */
export interface Strip {
  readonly heightMm: Mm;
  /** Drawn with its top left corner at a point. */
  readonly draw: (at: Point, book: Book) => readonly Drawn[];
}

/** What is laid down one below the other, from page to page. */
export type Piece =
  /** `head` is set again above it where it begins a page: the head of a table. What is blank never begins one. */
  | { readonly kind: 'strip'; readonly strip: Strip; readonly head?: Strip; readonly blank?: true }
  /** Stands where it is without taking room below: the rest goes beside it. */
  | { readonly kind: 'float'; readonly strip: Strip }
  /** What follows begins below everything that floats. */
  | { readonly kind: 'clear' }
  /** What follows begins a new page, unless that much room is left. */
  | { readonly kind: 'keep'; readonly heightMm: Mm }
  | { readonly kind: 'mark'; readonly mark: string };

interface Placed {
  readonly strip: Strip;
  readonly at: Point;
}

interface Flowed {
  readonly pages: readonly (readonly Placed[])[];
  readonly marks: ReadonlyMap<string, number>;
}

/** The room for what flows on a page. */
type BodyOf = (page: number) => Rect;

/** Lays the pieces down. A strip that is higher than a page has a page of its own, and runs over its foot. */
export function flow(pieces: readonly Piece[], bodyOf: BodyOf): Flowed {
  const pages: Placed[][] = [[]];
  const marks = new Map<string, number>();
  let body = bodyOf(1);
  let y = body.y;
  let floor = y;
  const left = () => body.y + body.height - y + 1e-6;
  const turn = () => {
    pages.push([]);
    body = bodyOf(pages.length);
    y = body.y;
    floor = y;
  };
  const place = (strip: Strip) => pages.at(-1)?.push({ strip, at: { x: body.x, y } });
  for (const piece of pieces) {
    switch (piece.kind) {
      case 'mark':
        marks.set(piece.mark, pages.length);
        break;
      case 'clear':
        y = Math.max(y, floor);
        break;
      case 'keep':
        if (piece.heightMm > left() && y > body.y) turn();
        break;
      case 'float':
        if (piece.strip.heightMm > left() && y > body.y) turn();
        place(piece.strip);
        floor = Math.max(floor, y + piece.strip.heightMm);
        break;
      case 'strip':
        if (piece.blank && piece.strip.heightMm > left()) {
          y = body.y + body.height;
          break;
        }
        if (piece.strip.heightMm > left() && y > body.y) turn();
        if (piece.head && pages.length > 1 && y === body.y && floor === y) {
          place(piece.head);
          y += piece.head.heightMm;
        }
        place(piece.strip);
        y += piece.strip.heightMm;
    }
  }
  return { pages, marks };
}

/** Empty room between things; at the end of a page as much as is left. */
export function gap(heightMm: Mm): Piece {
  return { kind: 'strip', strip: { heightMm, draw: () => [] }, blank: true };
}
