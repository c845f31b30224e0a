import type { Mm } from '../../base/units';
import type { Grid } from '../../document/grid';
import { type Matrix3, product } from './matrix3';
import { cellPlace } from './pointed';

/** Pixels as a canvas has them: red, green, blue and opacity of each, row by row. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** A view of the connector from straight above: which part of its plane, how large, and which way round. */
export interface StraightView {
  /** The left and top edge of the view, in millimetres from the middle of the connector's first cell. */
  readonly leftMm: Mm;
  readonly topMm: Mm;
  readonly widthMm: Mm;
  readonly heightMm: Mm;
  readonly pxPerMm: number;
  /** Left and right exchanged, as the board is seen from behind. */
  readonly mirrored: boolean;
}

/** The size of a view in pixels. */
export function viewSize({ widthMm, heightMm, pxPerMm }: StraightView): {
  readonly width: number;
  readonly height: number;
} {
  return {
    width: Math.max(1, Math.round(widthMm * pxPerMm)),
    height: Math.max(1, Math.round(heightMm * pxPerMm)),
  };
}

/** The view of a whole grid with a margin round it, in which its longer side has about so many pixels. */
export function viewOfGrid(grid: Grid, marginMm: Mm, longSidePx: number, mirrored: boolean): StraightView {
  const last = cellPlace(grid, [grid.rows - 1, grid.cols - 1]);
  const [widthMm, heightMm] = [last.x + 2 * marginMm, last.y + 2 * marginMm];
  const pxPerMm = longSidePx / Math.max(widthMm, heightMm);
  return { leftMm: -marginMm, topMm: -marginMm, widthMm, heightMm, pxPerMm, mirrored };
}

/** From millimetres of the connector to pixels of the view. */
export function toView({ leftMm, topMm, widthMm, pxPerMm, mirrored }: StraightView): Matrix3 {
  return mirrored
    ? [-pxPerMm, 0, (leftMm + widthMm) * pxPerMm, 0, pxPerMm, -topMm * pxPerMm, 0, 0, 1]
    : [pxPerMm, 0, -leftMm * pxPerMm, 0, pxPerMm, -topMm * pxPerMm, 0, 0, 1];
}

/** From pixels of the view to millimetres of the connector. */
export function fromView({ leftMm, topMm, widthMm, pxPerMm, mirrored }: StraightView): Matrix3 {
  const mm = 1 / pxPerMm;
  return mirrored
    ? [-mm, 0, leftMm + widthMm, 0, mm, topMm, 0, 0, 1]
    : [mm, 0, leftMm, 0, mm, topMm, 0, 0, 1];
}

/**
 * Fills rows of a straight view from a photo, each pixel mixed from the four of the photo round its place
 * (bilinear). What lies outside the photo stays clear. The work of a slice is rows × width, so that a long
 * job can be done in slices, with other things in between.
 *
 * @param toPx from millimetres of the connector to pixels of the photo
 * @param into the pixels of the view; only rows `from` to below `until` are written
 */
export function straightenRows(
  photo: Pixels,
  toPx: Matrix3,
  view: StraightView,
  into: Pixels,
  from: number,
  until: number,
): void {
  const [a, b, c, d, e, f, g, h, i] = product(toPx, fromView(view));
  const [right, bottom] = [photo.width - 1, photo.height - 1];
  // A whole pixel at once: four bytes in the order of this machine, mixed two channels at a time.
  const source = words(photo.data);
  const target = words(into.data);
  for (let row = from; row < until; row += 1) {
    // The middle of a pixel of the view; a photo's pixel (0, 0) has its middle at 0.5, 0.5 too.
    const y = row + 0.5;
    let u = a * 0.5 + b * y + c;
    let v = d * 0.5 + e * y + f;
    let w = g * 0.5 + h * y + i;
    let at = row * into.width;
    const end = at + into.width;
    for (; at < end; at += 1, u += a, v += d, w += g) {
      const depth = 1 / w;
      const px = u * depth - 0.5;
      const py = v * depth - 0.5;
      // Half a pixel at the edge belongs to the edge. A place beyond the horizon fails every comparison or lies outside.
      if (!(w > 0 && px > -0.5 && py > -0.5 && px < right + 0.5 && py < bottom + 0.5)) {
        target[at] = 0;
        continue;
      }
      const sx = Math.max(0, Math.min(px, right));
      const sy = Math.max(0, Math.min(py, bottom));
      const left = sx | 0;
      const top = sy | 0;
      const fx = ((sx - left) * 256) | 0;
      const fy = ((sy - top) * 256) | 0;
      const start = top * photo.width + left;
      const dx = left < right ? 1 : 0;
      const dy = top < bottom ? photo.width : 0;
      target[at] = mixed(
        source[start] ?? 0,
        source[start + dx] ?? 0,
        source[start + dy] ?? 0,
        source[start + dx + dy] ?? 0,
        fx,
        fy,
      );
    }
  }
}

/** Whole pixels as signed words, which the engine keeps as plain integers. */
function words({ buffer, byteOffset, length }: Uint8ClampedArray): Int32Array {
  return new Int32Array(buffer, byteOffset, length / 4);
}

const EVEN = 0x00ff00ff;
const HALF = 0x00800080;

/** Four pixels mixed by how near each is, in 256ths: two channels of eight bits at once in a word of 32. */
function mixed(tl: number, tr: number, bl: number, br: number, fx: number, fy: number): number {
  const wbr = (fx * fy) >>> 8;
  const wtr = fx - wbr;
  const wbl = fy - wbr;
  const wtl = 256 - fx - wbl;
  const even = shares(tl & EVEN, tr & EVEN, bl & EVEN, br & EVEN, wtl, wtr, wbl, wbr);
  const odd = shares(
    (tl >>> 8) & EVEN,
    (tr >>> 8) & EVEN,
    (bl >>> 8) & EVEN,
    (br >>> 8) & EVEN,
    wtl,
    wtr,
    wbl,
    wbr,
  );
  return ((even >>> 8) & EVEN) | (odd & ~EVEN);
}

function shares(
  tl: number,
  tr: number,
  bl: number,
  br: number,
  wtl: number,
  wtr: number,
  wbl: number,
  wbr: number,
): number {
  const top = (Math.imul(tl, wtl) + Math.imul(tr, wtr)) | 0;
  const bottom = (Math.imul(bl, wbl) + Math.imul(br, wbr)) | 0;
  return (top + bottom + HALF) | 0;
}
