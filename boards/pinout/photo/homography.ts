import { depthAt, inverse, type Matrix3, mapped, type PlanePoint, product, scaled } from './matrix3';
import { NormalEquations } from './normal-equations';
import { nullVector } from './null-vector';

/** The same point in two planes. */
export interface PointPair {
  readonly from: PlanePoint;
  readonly to: PlanePoint;
}

const REFINING_STEPS = 12;
/** A step that moves no unknown by more than this, in units of the spread of the points, is the last. */
const STILL = 1e-12;

/**
 * The projective map that takes each point as near as it can to its partner: the normalised direct linear
 * transform (Hartley, In defense of the eight-point algorithm, 1997; Hartley and Zisserman, Multiple View
 * Geometry, algorithm 4.2), then Gauss-Newton steps on the distances in the second plane, where the points
 * were measured. Exact for four points.
 *
 * @param pairs at least four, no three of the least four in a line in either plane: the caller has seen to it
 * @returns undefined where the points do not determine a map after all
 */
export function homography(pairs: readonly PointPair[]): Matrix3 | undefined {
  const first = normalising(pairs.map(({ from }) => from));
  const second = normalising(pairs.map(({ to }) => to));
  const normal = pairs.map(({ from, to }) => ({ from: mapped(first, from), to: mapped(second, to) }));
  const linear = directLinear(normal);
  if (linear === undefined) return undefined;
  return denormalised(pairs.length > 4 ? refined(linear, normal) : linear, first, second);
}

/** Moves the middle of the points to the origin and their mean distance from it to the root of two. */
function normalising(points: readonly PlanePoint[]): Matrix3 {
  const middle = {
    x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
    y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
  };
  const mean = points.reduce((sum, { x, y }) => sum + Math.hypot(x - middle.x, y - middle.y), 0);
  const scale = mean > 0 ? (Math.SQRT2 * points.length) / mean : 1;
  return [scale, 0, -scale * middle.x, 0, scale, -scale * middle.y, 0, 0, 1];
}

function denormalised(normal: Matrix3, first: Matrix3, second: Matrix3): Matrix3 {
  return scaled(product(product(inverse(second), normal), first));
}

/** Two rows for each pair (Hartley and Zisserman, equation 4.3), solved up to scale. */
function directLinear(pairs: readonly PointPair[]): Matrix3 | undefined {
  const rows = pairs.flatMap(({ from: { x, y }, to }) => [
    [0, 0, 0, -x, -y, -1, to.y * x, to.y * y, to.y],
    [x, y, 1, 0, 0, 0, -to.x * x, -to.x * y, -to.x],
  ]);
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 0] = nullVector(
    Float64Array.from(rows.flat()),
    9,
  );
  // The middle of the points is the origin here: a map that sends it to infinity is none of a photo.
  return Math.abs(i) < 1e-9 ? undefined : scaled([a, b, c, d, e, f, g, h, i]);
}

/** Gauss-Newton on the eight unknowns; a step that would make the squares larger is not taken. */
function refined(start: Matrix3, pairs: readonly PointPair[]): Matrix3 {
  let matrix = start;
  let squares = squaresOf(matrix, pairs);
  for (let step = 0; step < REFINING_STEPS; step += 1) {
    const equations = new NormalEquations(8);
    for (const { from, to } of pairs) {
      const [byX, byY] = slopesAt(matrix, from);
      const at = mapped(matrix, from);
      equations.add(byX, to.x - at.x);
      equations.add(byY, to.y - at.y);
    }
    const move = equations.solution();
    if (move === undefined) break;
    const [a, b, c, d, e, f, g, h] = matrix;
    const [da = 0, db = 0, dc = 0, dd = 0, de = 0, df = 0, dg = 0, dh = 0] = move;
    const next: Matrix3 = [a + da, b + db, c + dc, d + dd, e + de, f + df, g + dg, h + dh, 1];
    const nextSquares = squaresOf(next, pairs);
    if (!(nextSquares <= squares)) break;
    [matrix, squares] = [next, nextSquares];
    if (move.every((each) => Math.abs(each) < STILL)) break;
  }
  return matrix;
}

function squaresOf(matrix: Matrix3, pairs: readonly PointPair[]): number {
  return pairs.reduce((sum, { from, to }) => {
    const at = mapped(matrix, from);
    return sum + (to.x - at.x) ** 2 + (to.y - at.y) ** 2;
  }, 0);
}

/** How the mapped x and y change with the eight free elements; the ninth is one. */
function slopesAt(matrix: Matrix3, point: PlanePoint): readonly [readonly number[], readonly number[]] {
  const depth = depthAt(matrix, point);
  const at = mapped(matrix, point);
  const [x, y, one] = [point.x / depth, point.y / depth, 1 / depth];
  return [
    [x, y, one, 0, 0, 0, -at.x * x, -at.x * y],
    [0, 0, 0, x, y, one, -at.y * x, -at.y * y],
  ];
}
