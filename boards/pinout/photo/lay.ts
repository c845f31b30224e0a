import { ok, type Result, refuse } from '../../base/result';
import type { Mm } from '../../base/units';
import type { Grid } from '../../document/grid';
import { gridIndex } from '../../document/numbering';
import { homography, type PointPair } from './homography';
import { lineProblem } from './in-line';
import type { Doubt, LayProblem } from './lay-problem';
import { depthAt, determinant, inverse, type Matrix3, mapped, type PlanePoint, scaled } from './matrix3';
import { doubtOf, type Fit, type Outlier, pointingPx } from './outlier';
import { cellPlace, isOneRow, type PictureSize, type PinPoint, pointsNeeded } from './pointed';
import { rowFit } from './row-fit';

/** How far a point lies from where the grid has its pin. */
interface Residual {
  readonly pin: string;
  readonly px: number;
  readonly mm: Mm;
}

/** A connector's grid laid over a picture. */
export interface Lay {
  /** From millimetres of the connector (from the middle of its first cell) to pixels of the picture. */
  readonly toPx: Matrix3;
  readonly toMm: Matrix3;
  /** One for each point, in the order they were given. */
  readonly residuals: readonly Residual[];
  /** Root mean square of the residuals that the grid was laid by. */
  readonly rmsPx: number;
  /** What does not agree; null where all points do. */
  readonly doubt: Doubt | null;
  /** The picture shows the grid as in a mirror: from behind, or counted from another corner. */
  readonly mirrored: boolean;
  /** Only one row was there to point at: beside it the picture is taken as seen straight from above. */
  readonly oneRow: boolean;
  /** The points the grid was laid by: all, but for one that is off. */
  readonly laidBy: readonly PointPair[];
}

/** Two points closer than this are one place. */
const SAME_PLACE_PX = 1;

/**
 * Lays a connector's grid over a picture by the pins that were pointed at: exactly by the fewest, by least
 * squares over more. One point that does not agree with the rest is left out and named, where the points
 * are enough to tell which it is.
 */
export function layOf(
  grid: Grid,
  points: readonly PinPoint[],
  picture: PictureSize,
): Result<Lay, LayProblem> {
  const read = pairsOf(grid, points, picture);
  if (!read.ok) return read;
  const pairs = read.value;
  const need = pointsNeeded(grid);
  if (pairs.length < need) return refuse({ code: 'too-few', have: pairs.length, need });
  const oneRow = isOneRow(grid);
  const line = oneRow ? undefined : lineProblem(pairs, points);
  if (line !== undefined) return refuse(line);
  const fit: Fit = oneRow ? { map: rowFit, unknowns: 5 } : { map: homography, unknowns: 8 };
  const doubted = doubtOf(fit, pairs, pointingPx(pairs, grid.pitchMm));
  const laidBy = doubted?.kind === 'one' ? pairs.filter((_, at) => at !== doubted.at) : pairs;
  const toPx = fit.map(laidBy);
  if (toPx === undefined || twisted(grid, toPx)) return refuse({ code: 'crossed' });
  const toMm = scaled(inverse(toPx));
  const residuals = pairs.map((pair, at) => residualOf(points[at]?.pin ?? '', pair, toPx, toMm));
  const used = residuals.filter((_, at) => doubted?.kind !== 'one' || at !== doubted.at);
  return ok({
    toPx,
    toMm,
    residuals,
    rmsPx: Math.sqrt(used.reduce((sum, { px }) => sum + px * px, 0) / used.length),
    doubt: namedDoubt(doubted, grid, points, pairs, toMm),
    mirrored: !oneRow && determinant(toPx) < 0,
    oneRow,
    laidBy,
  });
}

/** Where each position of the grid lies in the picture, in counting order. */
export function pinSpots(grid: Grid, { toPx }: Pick<Lay, 'toPx'>): readonly PinPoint[] {
  return gridIndex(grid).positions.map(({ label, cell }) => {
    const { x, y } = mapped(toPx, cellPlace(grid, cell));
    return { pin: label, xPx: x, yPx: y };
  });
}

function pairsOf(
  grid: Grid,
  points: readonly PinPoint[],
  { widthPx, heightPx }: PictureSize,
): Result<readonly PointPair[], LayProblem> {
  const pairs: PointPair[] = [];
  for (const [at, { pin, xPx, yPx }] of points.entries()) {
    const cell = gridIndex(grid).cellOf(pin);
    if (cell === undefined) return refuse({ code: 'unknown-pin', pin });
    if (points.findIndex((other) => other.pin === pin) < at) return refuse({ code: 'pin-twice', pin });
    if (!(xPx >= 0 && yPx >= 0 && xPx <= widthPx && yPx <= heightPx)) return refuse({ code: 'outside', pin });
    const twin = pairs.findIndex(({ to }) => Math.hypot(to.x - xPx, to.y - yPx) < SAME_PLACE_PX);
    if (twin >= 0) return refuse({ code: 'same-place', pins: [points[twin]?.pin ?? '', pin] });
    pairs.push({ from: cellPlace(grid, cell), to: { x: xPx, y: yPx } });
  }
  return ok(pairs);
}

/** A photo has the whole grid before the camera: no corner may lie beyond the horizon. */
function twisted(grid: Grid, toPx: Matrix3): boolean {
  const corners = [0, grid.rows - 1].flatMap((row) =>
    [0, grid.cols - 1].map((col) => depthAt(toPx, cellPlace(grid, [row, col]))),
  );
  return !corners.every((depth) => depth > 0) && !corners.every((depth) => depth < 0);
}

function residualOf(pin: string, { from, to }: PointPair, toPx: Matrix3, toMm: Matrix3): Residual {
  return { pin, px: apart(mapped(toPx, from), to), mm: apart(mapped(toMm, to), from) };
}

function apart(a: PlanePoint, b: PlanePoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function namedDoubt(
  doubted: Outlier | null,
  grid: Grid,
  points: readonly PinPoint[],
  pairs: readonly PointPair[],
  toMm: Matrix3,
): Doubt | null {
  if (doubted === null) return null;
  const pinAt = (at: number) => points[at]?.pin ?? '';
  switch (doubted.kind) {
    case 'several':
      return doubted;
    case 'one-of':
      return { kind: 'one-of', pins: doubted.candidates.map(pinAt) };
    case 'one': {
      const to = pairs[doubted.at]?.to;
      const pin = pinAt(doubted.at);
      const standsAt = to && positionAt(grid, mapped(toMm, to));
      return standsAt === undefined || standsAt === pin
        ? { kind: 'one', pin }
        : { kind: 'one', pin, standsAt };
    }
  }
}

/** Where in its cell a pin is met: further from its middle it could be anything. */
const ON_PIN = 0.3;

/** The position whose middle lies near a place of the connector's plane. */
function positionAt(grid: Grid, place: PlanePoint): string | undefined {
  return gridIndex(grid).positions.find(
    ({ cell }) => apart(cellPlace(grid, cell), place) < ON_PIN * grid.pitchMm,
  )?.label;
}

const STEP_PX = 0.25;
/** 95 % of a two-dimensional normal distribution lie within this many standard deviations (χ² with 2 degrees: 5.99). */
const WITHIN_95 = 2.448;

/**
 * How near the pins of the grid lie to the truth, in millimetres: the worst pin, with 95 % certainty, when
 * each point is off by about as much as the residuals say, and never less than pointing is.
 */
export function accuracyMm(grid: Grid, { laidBy, oneRow, rmsPx, toPx }: Lay): Mm {
  const unknowns = oneRow ? 5 : 8;
  const spare = Math.max(0, 2 * laidBy.length - unknowns);
  const usualPx = pointingPx(laidBy, grid.pitchMm);
  const squares = rmsPx * rmsPx * laidBy.length;
  const variance = (squares + 4 * usualPx * usualPx) / (spare + 4);
  const toMm = scaled(inverse(toPx));
  const places = [0, grid.rows - 1].flatMap((row) =>
    [0, grid.cols - 1].map((col) => cellPlace(grid, [row, col])),
  );
  const sums = places.map(() => ({ xx: 0, xy: 0, yy: 0 }));
  const map = oneRow ? rowFit : homography;
  for (const at of laidBy.keys()) {
    for (const [dx, dy] of [
      [STEP_PX, 0],
      [0, STEP_PX],
    ] as const) {
      const moved = map(
        laidBy.map((pair, other) =>
          other === at ? { from: pair.from, to: { x: pair.to.x + dx, y: pair.to.y + dy } } : pair,
        ),
      );
      if (moved === undefined) continue;
      for (const [corner, place] of places.entries()) {
        const there = mapped(toMm, mapped(moved, place));
        const sum = sums[corner];
        if (sum === undefined) continue;
        const [x, y] = [(there.x - place.x) / STEP_PX, (there.y - place.y) / STEP_PX];
        sum.xx += x * x;
        sum.xy += x * y;
        sum.yy += y * y;
      }
    }
  }
  const worst = Math.max(...sums.map(({ xx, xy, yy }) => (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy)));
  return WITHIN_95 * Math.sqrt(worst * variance);
}
