import type { PointPair } from './homography';
import { type Matrix3, type PlanePoint, scaled, stretchAt } from './matrix3';
import { NormalEquations } from './normal-equations';

const UNKNOWNS = 5;

/**
 * The map for a connector of a single row, from three points of it: along the row the same as a homography
 * of the whole plane, which keeps the row straight and its cross-ratios. Of the plane beside the row the
 * points say nothing: there the map continues as if the row were seen straight from above.
 *
 * @returns undefined where the points do not determine it
 */
export function rowFit(pairs: readonly PointPair[]): Matrix3 | undefined {
  const upright = pairs.every(({ from }) => from.x === pairs[0]?.from.x);
  const along = ({ x, y }: PlanePoint) => (upright ? y : x);
  const places = pairs.map(({ from }) => along(from));
  const middle = places.reduce((sum, place) => sum + place, 0) / places.length;
  const reach = Math.max(...places.map((place) => Math.abs(place - middle)));
  const centre = {
    x: pairs.reduce((sum, { to }) => sum + to.x, 0) / pairs.length,
    y: pairs.reduce((sum, { to }) => sum + to.y, 0) / pairs.length,
  };
  const span = Math.max(...pairs.map(({ to }) => Math.hypot(to.x - centre.x, to.y - centre.y)));
  if (!(reach > 0 && span > 0)) return undefined;
  const equations = new NormalEquations(UNKNOWNS);
  for (const { from, to } of pairs) {
    const t = (along(from) - middle) / reach;
    const [x, y] = [(to.x - centre.x) / span, (to.y - centre.y) / span];
    equations.add([1, t, 0, 0, -x * t], x);
    equations.add([0, 0, 1, t, -y * t], y);
  }
  const solution = equations.solution();
  if (solution === undefined) return undefined;
  const [px = 0, qx = 0, py = 0, qy = 0, r = 0] = solution;
  // From the middle of the row and the picture back to their corners.
  const perMm = 1 / reach;
  const slant = r * perMm;
  const whole = 1 - slant * middle;
  const byT = { x: qx * perMm * span + centre.x * slant, y: qy * perMm * span + centre.y * slant };
  const start = {
    x: px * span + centre.x - middle * byT.x,
    y: py * span + centre.y - middle * byT.y,
  };
  return withAcross(byT, start, slant, whole, middle, upright);
}

/** Adds the direction across the row: at its middle as long as the one along it, and square to it. */
function withAcross(
  byT: PlanePoint,
  start: PlanePoint,
  slant: number,
  whole: number,
  middle: number,
  upright: boolean,
): Matrix3 {
  const flat: Matrix3 = [byT.x, 0, start.x, byT.y, 0, start.y, slant, 0, whole];
  const depth = slant * middle + whole;
  const { xByX, yByX } = stretchAt(flat, { x: middle, y: 0 });
  // Seen from above, x runs to the right and y down: a quarter to the right from one to the other.
  const across = { x: -yByX * depth, y: xByX * depth };
  return scaled(
    upright
      ? [-across.x, byT.x, start.x, -across.y, byT.y, start.y, 0, slant, whole]
      : [byT.x, across.x, start.x, byT.y, across.y, start.y, slant, 0, whole],
  );
}
