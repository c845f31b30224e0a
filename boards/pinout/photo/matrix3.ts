/** A 3 × 3 matrix, row by row: a projective map of the plane onto itself, the same map at any scale. */
export type Matrix3 = readonly [number, number, number, number, number, number, number, number, number];

/** A point of a plane; the unit is that of the plane. */
export interface PlanePoint {
  readonly x: number;
  readonly y: number;
}

/** The matrix that first does `second` and then `first`. */
export function product(first: Matrix3, second: Matrix3): Matrix3 {
  const [a, b, c, d, e, f, g, h, i] = first;
  const [j, k, l, m, n, o, p, q, r] = second;
  return [
    a * j + b * m + c * p,
    a * k + b * n + c * q,
    a * l + b * o + c * r,
    d * j + e * m + f * p,
    d * k + e * n + f * q,
    d * l + e * o + f * r,
    g * j + h * m + i * p,
    g * k + h * n + i * q,
    g * l + h * o + i * r,
  ];
}

export function determinant([a, b, c, d, e, f, g, h, i]: Matrix3): number {
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
}

/** The map back: the adjugate, which is the inverse at another scale. */
export function inverse([a, b, c, d, e, f, g, h, i]: Matrix3): Matrix3 {
  return [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
}

/** The third coordinate of a mapped point: its sign says on which side of the horizon the point lies. */
export function depthAt([, , , , , , g, h, i]: Matrix3, { x, y }: PlanePoint): number {
  return g * x + h * y + i;
}

/** Where a point goes. A point on the horizon has no finite place and gives infinities. */
export function mapped(matrix: Matrix3, point: PlanePoint): PlanePoint {
  const [a, b, c, d, e, f] = matrix;
  const { x, y } = point;
  const depth = depthAt(matrix, point);
  return { x: (a * x + b * y + c) / depth, y: (d * x + e * y + f) / depth };
}

/** How a map stretches the plane round a point: the change of the mapped point with x and with y. */
export interface Stretch {
  readonly xByX: number;
  readonly xByY: number;
  readonly yByX: number;
  readonly yByY: number;
}

export function stretchAt(matrix: Matrix3, point: PlanePoint): Stretch {
  const [a, b, , d, e, , g, h] = matrix;
  const depth = depthAt(matrix, point);
  const { x, y } = mapped(matrix, point);
  return {
    xByX: (a - g * x) / depth,
    xByY: (b - h * x) / depth,
    yByX: (d - g * y) / depth,
    yByY: (e - h * y) / depth,
  };
}

/** The same map with a last element of one; one that has a zero there stays as it is. */
export function scaled(matrix: Matrix3): Matrix3 {
  const [a, b, c, d, e, f, g, h, last] = matrix;
  if (last === 0) return matrix;
  return [a / last, b / last, c / last, d / last, e / last, f / last, g / last, h / last, 1];
}
