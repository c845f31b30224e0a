import fc from 'fast-check';
import { Matrix, SVD } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { homography, type PointPair } from '../../../../boards/pinout/photo/homography';
import {
  inverse,
  type Matrix3,
  mapped,
  type PlanePoint,
  scaled,
} from '../../../../boards/pinout/photo/matrix3';
import { arbitrarySeed } from '../../arbitrary-build';
import { Dice } from '../../dice';
import { anyCamera, between, cameraMap, normal, seen } from './camera';

const SIZE = { x: 60, y: 40 };
const MIDDLE = { x: SIZE.x / 2, y: SIZE.y / 2 };

/** Places spread over the plane, the first four near its corners. */
function places(dice: Dice, count: number): readonly PlanePoint[] {
  const near = (corner: number, size: number) => corner * size + between(dice, -0.15, 0.15) * size;
  const corners = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  return Array.from({ length: count }, (_, at) => {
    const corner = corners[at];
    return corner
      ? { x: near(corner[0], SIZE.x), y: near(corner[1], SIZE.y) }
      : { x: between(dice, 0, SIZE.x), y: between(dice, 0, SIZE.y) };
  });
}

function pairsThrough(map: Matrix3, from: readonly PlanePoint[], dice?: Dice): readonly PointPair[] {
  return from.map((place) => {
    const { x, y } = seen(map, place);
    return { from: place, to: dice ? { x: x + 0.5 * normal(dice), y: y + 0.5 * normal(dice) } : { x, y } };
  });
}

/** The direct linear transform with the same normalisation, solved by the general library's SVD. */
function bySvd(pairs: readonly PointPair[]): readonly number[] {
  const normalising = (points: readonly PlanePoint[]) => {
    const mean = (of: (point: PlanePoint) => number) =>
      points.reduce((sum, point) => sum + of(point), 0) / points.length;
    const [x, y] = [mean((point) => point.x), mean((point) => point.y)];
    const scale = Math.SQRT2 / mean((point) => Math.hypot(point.x - x, point.y - y));
    return new Matrix([
      [scale, 0, -scale * x],
      [0, scale, -scale * y],
      [0, 0, 1],
    ]);
  };
  const [first, second] = [
    normalising(pairs.map(({ from }) => from)),
    normalising(pairs.map(({ to }) => to)),
  ];
  const moved = (matrix: Matrix, { x, y }: PlanePoint) =>
    matrix.mmul(Matrix.columnVector([x, y, 1])).to1DArray();
  const rows = pairs.flatMap(({ from, to }) => {
    const [x = 0, y = 0] = moved(first, from);
    const [u = 0, v = 0] = moved(second, to);
    return [
      [0, 0, 0, -x, -y, -1, v * x, v * y, v],
      [x, y, 1, 0, 0, 0, -u * x, -u * y, -u],
    ];
  });
  // Rows of zeros, so that the library gives all nine singular vectors also for four points.
  while (rows.length < 9) rows.push([0, 0, 0, 0, 0, 0, 0, 0, 0]);
  const svd = new SVD(new Matrix(rows), { autoTranspose: true });
  const least = svd.diagonal.indexOf(Math.min(...svd.diagonal));
  const h = svd.rightSingularVectors.getColumn(least);
  const normal3 = new Matrix([h.slice(0, 3), h.slice(3, 6), h.slice(6, 9)]);
  const inverseOfSecond = new SVD(second).inverse();
  const whole = inverseOfSecond.mmul(normal3).mmul(first);
  return whole.div(whole.get(2, 2)).to1DArray();
}

function squares(map: readonly number[], pairs: readonly PointPair[]): number {
  return pairs.reduce((sum, { from, to }) => {
    const at = seen(map as unknown as Matrix3, from);
    return sum + (at.x - to.x) ** 2 + (at.y - to.y) ** 2;
  }, 0);
}

/** The furthest that two maps put one place of the plane from each other, in pixels. */
function apart(one: Matrix3, other: readonly number[]): number {
  const corners = [0, 0.5, 1].flatMap((x) => [0, 0.5, 1].map((y) => ({ x: x * SIZE.x, y: y * SIZE.y })));
  return Math.max(
    ...corners.map((place) => {
      const [a, b] = [seen(one, place), seen(other as unknown as Matrix3, place)];
      return Math.hypot(a.x - b.x, a.y - b.y);
    }),
  );
}

function mapOf(pairs: readonly PointPair[]): Matrix3 {
  const map = homography(pairs);
  if (map === undefined) throw new Error('The points determine no map');
  return map;
}

const pair = (x: number, y: number, u: number, v: number): PointPair => ({
  from: { x, y },
  to: { x: u, y: v },
});

describe('published worked examples', () => {
  // The unit test test_homography_p2p.m of the repository justinblaber/camera_calib_matlab, which prints the
  // points and the matrix in full.
  it('the unit square onto a quadrangle', () => {
    const map = mapOf([
      pair(0, 0, 0.1, 0.3),
      pair(0, 1, 0.2, 0.8),
      pair(1, 0, 0.7, 0.1),
      pair(1, 1, 0.8, 0.7),
    ]);
    const printed = [
      0.486486486486487, 0.105405405405405, 0.1, -0.216216216216216, 0.521621621621622, 0.3,
      -0.162162162162162, 0.027027027027027, 1,
    ];
    for (const [at, value] of printed.entries()) expect(map[at]).toBeCloseTo(value, 13);
  });

  // TestGetPerspectiveTransform.m of the repository kyamagu/mexopencv: a quarter turn.
  it('a quarter turn, of which one point lies inside', () => {
    const map = mapOf([pair(0, 1, 1, 1), pair(1, 1, 1, 0), pair(1, 0, 0, 0), pair(0.25, 0.25, 0.25, 0.75)]);
    for (const [at, value] of [0, 1, 0, -1, 0, 1, 0, 0, 1].entries()) expect(map[at]).toBeCloseTo(value, 12);
  });

  // Heckbert, Fundamentals of Texture Mapping and Image Warping (1989), section 2.2.3: the closed form for the
  // unit square; written out from memory, and it has to agree with the printed example above.
  it('the closed form for the unit square', () => {
    const heckbert = (corners: readonly (readonly [number, number])[]): readonly number[] => {
      const [[x0, y0], [x1, y1], [x2, y2], [x3, y3]] = corners as [
        [number, number],
        [number, number],
        [number, number],
        [number, number],
      ];
      const [dx1, dx2, sx] = [x1 - x2, x3 - x2, x0 - x1 + x2 - x3];
      const [dy1, dy2, sy] = [y1 - y2, y3 - y2, y0 - y1 + y2 - y3];
      const whole = dx1 * dy2 - dx2 * dy1;
      const g = (sx * dy2 - dx2 * sy) / whole;
      const h = (dx1 * sy - sx * dy1) / whole;
      return [x1 - x0 + g * x1, x3 - x0 + h * x3, x0, y1 - y0 + g * y1, y3 - y0 + h * y3, y0, g, h, 1];
    };
    expect(
      heckbert([
        [0.1, 0.3],
        [0.7, 0.1],
        [0.8, 0.7],
        [0.2, 0.8],
      ])[6],
    ).toBeCloseTo(-0.162162162162162, 13);
    const corner = fc.integer({ min: -180, max: 180 });
    fc.assert(
      fc.property(fc.tuple(corner, corner, corner, corner, corner, corner, corner, corner), (moves) => {
        const at = (place: number, base: number) => base + (moves[place] ?? 0);
        const corners = [
          [at(0, 0), at(1, 0)],
          [at(2, 1_000), at(3, 0)],
          [at(4, 1_000), at(5, 1_000)],
          [at(6, 0), at(7, 1_000)],
        ] as const;
        const map = mapOf(
          (
            [
              [0, 0],
              [1, 0],
              [1, 1],
              [0, 1],
            ] as const
          ).map(([x, y], which) => pair(x, y, corners[which]?.[0] ?? 0, corners[which]?.[1] ?? 0)),
        );
        for (const [place, value] of heckbert(corners).entries())
          expect(Math.abs((map[place] ?? 0) - value)).toBeLessThan(1e-9 * (1 + Math.abs(value)));
      }),
      { seed: 20_260_401 },
    );
  });
});

describe('a thousand random cameras, beside the SVD of a general-purpose library (ml-matrix)', () => {
  it('four points: the same map, and the camera itself', () => {
    let worst = 0;
    for (let seed = 1; seed <= 1_000; seed++) {
      const dice = new Dice(seed);
      const camera = cameraMap(anyCamera(dice), MIDDLE);
      const pairs = pairsThrough(camera, places(dice, 4));
      const map = mapOf(pairs);
      worst = Math.max(worst, apart(map, camera), apart(map, bySvd(pairs)));
    }
    expect(worst).toBeLessThan(1e-7);
  });

  it('twelve points with noise: never further from the points, and within the noise of the same map', () => {
    let worst = 0;
    for (let seed = 1; seed <= 1_000; seed++) {
      const dice = new Dice(seed);
      const pairs = pairsThrough(cameraMap(anyCamera(dice), MIDDLE), places(dice, 12), dice);
      const [ours, theirs] = [mapOf(pairs), bySvd(pairs)];
      // The library's answer is least in the equations; ours goes on to be least in the picture.
      expect(squares(ours, pairs)).toBeLessThanOrEqual(squares(theirs, pairs) * (1 + 1e-9));
      worst = Math.max(worst, apart(ours, theirs));
    }
    expect(worst).toBeLessThan(1);
  });
});

describe('what holds for every camera and every set of points', () => {
  it('there and back is the same place, and the order of the points does not matter', () => {
    fc.assert(
      fc.property(arbitrarySeed, fc.integer({ min: 4, max: 12 }), (seed, count) => {
        const dice = new Dice(seed);
        const pairs = pairsThrough(cameraMap(anyCamera(dice), MIDDLE), places(dice, count), dice);
        const map = mapOf(pairs);
        const back = inverse(map);
        for (const { from } of pairs) {
          const { x, y } = mapped(back, mapped(map, from));
          expect(Math.hypot(x - from.x, y - from.y)).toBeLessThan(1e-8);
        }
        expect(apart(map, mapOf(pairs.toReversed()))).toBeLessThan(1e-5);
      }),
      { seed: 20_260_402, numRuns: 500 },
    );
  });

  it('the map of the exchanged pairs is the map back', () => {
    fc.assert(
      fc.property(arbitrarySeed, (seed) => {
        const dice = new Dice(seed);
        const pairs = pairsThrough(cameraMap(anyCamera(dice), MIDDLE), places(dice, 4));
        const there = mapOf(pairs);
        const back = mapOf(pairs.map(({ from, to }) => ({ from: to, to: from })));
        expect(apart(scaled(inverse(back)), there)).toBeLessThan(1e-6);
      }),
      { seed: 20_260_403, numRuns: 500 },
    );
  });
});
