import type { PointPair } from './homography';
import type { LayProblem } from './lay-problem';
import type { PlanePoint } from './matrix3';
import type { PinPoint } from './pointed';

/** Three points of the picture are in a line when one lies nearer than this to the line through the others. */
const IN_LINE_PX = 2;
/** On the grid the places are exact. */
const IN_LINE_MM = 1e-6;

/**
 * Which pins lie in a line, where no four of the points make a quadrangle both on the grid and in the
 * picture; undefined where some four do.
 */
export function lineProblem(
  pairs: readonly PointPair[],
  points: readonly PinPoint[],
): LayProblem | undefined {
  const count = pairs.length;
  const flat = (a: number, b: number, c: number) => inLine([pairs[a], pairs[b], pairs[c]]);
  for (let a = 0; a < count; a += 1) {
    for (let b = a + 1; b < count; b += 1) {
      for (let c = b + 1; c < count; c += 1) {
        if (flat(a, b, c)) continue;
        for (let d = c + 1; d < count; d += 1)
          if (!flat(a, b, d) && !flat(a, c, d) && !flat(b, c, d)) return undefined;
      }
    }
  }
  return { code: 'in-line', pins: longestLine(pairs).map((at) => points[at]?.pin ?? '') };
}

/** The points of the line that most of them lie on. */
function longestLine(pairs: readonly PointPair[]): readonly number[] {
  let longest: readonly number[] = [];
  for (let a = 0; a < pairs.length; a += 1) {
    for (let b = a + 1; b < pairs.length; b += 1) {
      const on = [...pairs.keys()].filter(
        (at) => at === a || at === b || inLine([pairs[a], pairs[b], pairs[at]]),
      );
      if (on.length > longest.length) longest = on;
    }
  }
  return longest;
}

function inLine(three: readonly (PointPair | undefined)[]): boolean {
  const known = three.filter((pair) => pair !== undefined);
  return height(known.map(({ from }) => from)) < IN_LINE_MM || height(known.map(({ to }) => to)) < IN_LINE_PX;
}

/** The least height of a triangle. */
function height(corners: readonly PlanePoint[]): number {
  const [a, b, c] = corners;
  if (a === undefined || b === undefined || c === undefined) return 0;
  const doubleArea = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  const longest = Math.max(
    Math.hypot(b.x - a.x, b.y - a.y),
    Math.hypot(c.x - a.x, c.y - a.y),
    Math.hypot(c.x - b.x, c.y - b.y),
  );
  return longest === 0 ? 0 : doubleArea / longest;
}
