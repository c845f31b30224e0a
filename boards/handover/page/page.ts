import type { Mm } from '../../base/units';
import type { Point, Rect } from '../../drawing/geometry';
import type { Face } from '../../drawing/measure';
import type { Fill, Ink } from './inks';
import type { PaperSize } from './paper';

/** A stroke of a pen. */
export interface Stroke {
  readonly ink: Ink;
  readonly widthMm: Mm;
  /** Length of the dashes and of the gaps between them. */
  readonly dashMm?: Mm;
}

/** How a shape is filled and outlined; one of the two at least. */
export interface Paint {
  readonly fill?: Fill;
  readonly stroke?: Stroke;
}

/** One line of text, already measured. */
export interface DrawnText {
  readonly kind: 'text';
  readonly text: string;
  /** On the line the letters stand on: where they begin, their middle, or where they end. */
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly sizeMm: Mm;
  readonly widthMm: Mm;
  readonly face: Face;
  readonly ink: Ink;
  /** Reads from bottom to top. */
  readonly upright?: true;
}

/** What can stand on a page. Millimetres from the top left corner, y down. */
export type Drawn =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly stroke: Stroke }
  | { readonly kind: 'rect'; readonly box: Rect; readonly paint: Paint }
  | { readonly kind: 'shape'; readonly points: readonly Point[]; readonly paint: Paint }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radiusMm: Mm; readonly paint: Paint }
  | DrawnText
  | DrawnGroup;

/** Things that belong together, moved and scaled as one; the title is for those who cannot see it. */
export interface DrawnGroup {
  readonly kind: 'group';
  readonly items: readonly Drawn[];
  readonly title?: string;
  readonly at?: Point;
  readonly scale?: number;
}

export interface Page {
  /** What the page shows, in a sentence, for those who cannot see it. */
  readonly words: string;
  readonly items: readonly Drawn[];
}

/** Pages that are printed together. */
export interface Paper {
  readonly title: string;
  readonly size: PaperSize;
  readonly pages: readonly Page[];
  /** Where the parts begin; pages are counted from 1. */
  readonly contents: readonly { readonly title: string; readonly page: number }[];
}
