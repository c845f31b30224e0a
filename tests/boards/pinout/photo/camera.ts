import type { Grid } from '../../../../boards/document/grid';
import { gridIndex } from '../../../../boards/document/numbering';
import type { Matrix3, PlanePoint } from '../../../../boards/pinout/photo/matrix3';
import { cellPlace, type PinPoint } from '../../../../boards/pinout/photo/pointed';
import type { Dice } from '../../dice';

/** A pinhole camera over a board: where it hangs, how it is tilted, how its lens is. */
export interface Camera {
  /** Height over the middle of the view, along the line of sight, in millimetres. */
  readonly awayMm: number;
  /** The line of sight against the board's normal, and the side it leans to, in degrees. */
  readonly tiltDeg: number;
  readonly towardsDeg: number;
  /** The camera turned about its own line of sight, in degrees. */
  readonly rollDeg: number;
  readonly focalPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A telephone held over a header, as people hold it: 12 megapixels scaled to 2,000 pixels, 70° across. */
export const TYPICAL: Camera = {
  awayMm: 120,
  tiltDeg: 20,
  towardsDeg: 40,
  rollDeg: 12,
  focalPx: 1_430,
  widthPx: 2_000,
  heightPx: 1_500,
};

type Vector = readonly [number, number, number];

const rad = (degrees: number) => (degrees * Math.PI) / 180;

/**
 * The map of a plane into a picture, K·[r1 r2 t], as the textbooks have it (Hartley and Zisserman, Multiple
 * View Geometry, section 8.1.1): written here from the camera alone, without anything of the code under test.
 *
 * @param middle the place of the plane that is seen in the middle of the picture
 */
export function cameraMap(camera: Camera, middle: PlanePoint): Matrix3 {
  const { awayMm, focalPx, widthPx, heightPx } = camera;
  const [tilt, towards, roll] = [rad(camera.tiltDeg), rad(camera.towardsDeg), rad(camera.rollDeg)];
  // Turn about the axis in the board's plane that stands square to the side the camera leans to.
  const axis: Vector = [-Math.sin(towards), Math.cos(towards), 0];
  const turned = (vector: Vector): Vector => rollBy(aboutAxis(vector, axis, tilt), roll);
  const [r1, r2] = [turned([1, 0, 0]), turned([0, 1, 0])];
  const t: Vector = [
    -(r1[0] * middle.x + r2[0] * middle.y),
    -(r1[1] * middle.x + r2[1] * middle.y),
    awayMm - (r1[2] * middle.x + r2[2] * middle.y),
  ];
  const row = (at: 0 | 1, centre: number): Vector => [
    focalPx * r1[at] + centre * r1[2],
    focalPx * r2[at] + centre * r2[2],
    focalPx * t[at] + centre * t[2],
  ];
  return [...row(0, widthPx / 2), ...row(1, heightPx / 2), r1[2], r2[2], t[2]];
}

function aboutAxis(v: Vector, k: Vector, angle: number): Vector {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const along = (k[0] * v[0] + k[1] * v[1] + k[2] * v[2]) * (1 - c);
  return [
    v[0] * c + (k[1] * v[2] - k[2] * v[1]) * s + k[0] * along,
    v[1] * c + (k[2] * v[0] - k[0] * v[2]) * s + k[1] * along,
    v[2] * c + (k[0] * v[1] - k[1] * v[0]) * s + k[2] * along,
  ];
}

function rollBy([x, y, z]: Vector, angle: number): Vector {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [c * x - s * y, s * x + c * y, z];
}

/** The same division by the third coordinate as in any camera, for the truth of a test. */
export function seen([a, b, c, d, e, f, g, h, i]: Matrix3, { x, y }: PlanePoint): PlanePoint {
  const depth = g * x + h * y + i;
  return { x: (a * x + b * y + c) / depth, y: (d * x + e * y + f) / depth };
}

/** The middle of a grid in its own plane. */
export function middleOf(grid: Grid): PlanePoint {
  const last = cellPlace(grid, [grid.rows - 1, grid.cols - 1]);
  return { x: last.x / 2, y: last.y / 2 };
}

/** Where the camera sees each pin of a grid that it looks at the middle of. */
export function truePoints(grid: Grid, camera: Camera): readonly PinPoint[] {
  const map = cameraMap(camera, middleOf(grid));
  return gridIndex(grid).positions.map(({ label, cell }) => {
    const { x, y } = seen(map, cellPlace(grid, cell));
    return { pin: label, xPx: x, yPx: y };
  });
}

/** A number between two others. */
export function between(dice: Dice, low: number, high: number): number {
  return low + ((high - low) * dice.below(1_000_001)) / 1_000_000;
}

/** A normal deviate of unit spread (Box and Muller 1958). */
export function normal(dice: Dice): number {
  const u = (dice.below(1_000_000) + 0.5) / 1_000_000;
  return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * between(dice, 0, 1));
}

/** A camera as somebody may hold it: from near or far, leaning up to 45°, any way round. */
export function anyCamera(dice: Dice): Camera {
  return {
    awayMm: between(dice, 60, 300),
    tiltDeg: between(dice, 0, 45),
    towardsDeg: between(dice, 0, 360),
    rollDeg: between(dice, 0, 360),
    focalPx: between(dice, 900, 2_400),
    widthPx: 2_000,
    heightPx: 1_500,
  };
}

/** The points as an unsteady hand gives them. */
export function shaken(points: readonly PinPoint[], dice: Dice, sigmaPx: number): readonly PinPoint[] {
  return points.map(({ pin, xPx, yPx }) => ({
    pin,
    xPx: xPx + sigmaPx * normal(dice),
    yPx: yPx + sigmaPx * normal(dice),
  }));
}
