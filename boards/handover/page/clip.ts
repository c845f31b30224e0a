import type { Line, Point, Rect } from '../../drawing/geometry';

/** The part of a line inside a rectangle; undefined when there is none. Liang and Barsky, 1984. */
export function clippedLine([from, to]: Line, rect: Rect): Line | undefined {
  let enter = 0;
  let leave = 1;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const sides = [
    [-dx, from.x - rect.x],
    [dx, rect.x + rect.width - from.x],
    [-dy, from.y - rect.y],
    [dy, rect.y + rect.height - from.y],
  ] as const;
  for (const [towards, distance] of sides) {
    if (towards === 0) {
      if (distance < 0) return undefined;
      continue;
    }
    const share = distance / towards;
    if (towards < 0) enter = Math.max(enter, share);
    else leave = Math.min(leave, share);
  }
  if (enter >= leave) return undefined;
  const at = (share: number): Point => ({ x: from.x + dx * share, y: from.y + dy * share });
  return [at(enter), at(leave)];
}

/** The part of a shape without dents inside a rectangle. Sutherland and Hodgman, 1974. */
export function clippedShape(points: readonly Point[], rect: Rect): readonly Point[] {
  const halves: readonly ((point: Point) => number)[] = [
    ({ x }) => x - rect.x,
    ({ x }) => rect.x + rect.width - x,
    ({ y }) => y - rect.y,
    ({ y }) => rect.y + rect.height - y,
  ];
  return halves.reduce(cutOff, points);
}

/** What of a shape lies where `inside` is not negative. */
function cutOff(points: readonly Point[], inside: (point: Point) => number): readonly Point[] {
  return points.flatMap((point, index): readonly Point[] => {
    const next = points[(index + 1) % points.length] ?? point;
    const [here, there] = [inside(point), inside(next)];
    const kept = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    const share = here / (here - there);
    return [...kept, { x: point.x + (next.x - point.x) * share, y: point.y + (next.y - point.y) * share }];
  });
}
