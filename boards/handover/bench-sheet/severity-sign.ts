import type { Mm } from '../../base/units';
import type { Line, Point } from '../../drawing/geometry';
import type { Measure } from '../../drawing/measure';
import type { Severity } from '../../findings/finding';
import type { Drawn } from '../page/page';
import { halfCapital, textAt } from '../page/type';
import { doubtSign } from '../pinout/signs';

/** The sign of a severity, told apart by its shape: octagon with hatching, filled diamond, ring, dot. */
export function severitySign(
  severity: Severity,
  centre: Point,
  radiusMm: Mm,
  measure: Measure,
): readonly Drawn[] {
  switch (severity) {
    case 'danger':
      return danger(centre, radiusMm, measure);
    case 'fault':
      return fault(centre, radiusMm, measure);
    case 'doubt':
      return doubtSign(centre, radiusMm * 0.9, measure);
    case 'note':
      return [{ kind: 'circle', centre, radiusMm: radiusMm * 0.4, paint: { fill: 'soft' } }];
  }
}

function danger(centre: Point, radius: Mm, measure: Measure): readonly Drawn[] {
  const points = Array.from({ length: 8 }, (_, corner) => {
    const angle = ((corner + 0.5) * Math.PI) / 4;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
  return [
    { kind: 'shape', points, paint: { fill: 'ink' } },
    ...hatching(centre, radius).map(([from, to]): Drawn => {
      return { kind: 'line', from, to, stroke: { ink: 'paper', widthMm: radius * 0.1 } };
    }),
    exclamation(centre, radius, measure),
  ];
}

/** Slanting lines on either side of the mark, between two opposite edges of the octagon. */
function hatching({ x, y }: Point, radius: Mm): readonly Line[] {
  const edge = radius * Math.cos(Math.PI / 8) * Math.SQRT2;
  return [-0.95, -0.68, 0.68, 0.95].map((share): Line => {
    // A line x + y = c cuts the octagon where its slanting edges x − y = ±edge meet it, or its upright ones.
    const c = share * edge;
    const half = Math.min(edge / 2, edge / Math.SQRT2 - Math.abs(c) / 2);
    return [
      { x: x + c / 2 - half, y: y + c / 2 + half },
      { x: x + c / 2 + half, y: y + c / 2 - half },
    ];
  });
}

function fault({ x, y }: Point, radius: Mm, measure: Measure): readonly Drawn[] {
  const points = [
    { x, y: y - radius },
    { x: x + radius, y },
    { x, y: y + radius },
    { x: x - radius, y },
  ];
  return [{ kind: 'shape', points, paint: { fill: 'ink' } }, exclamation({ x, y }, radius * 0.85, measure)];
}

/** White on the dark of the sign. */
function exclamation({ x, y }: Point, radius: Mm, measure: Measure): Drawn {
  const sizeMm = radius * 1.45;
  const type = { face: 'strong', sizeMm, ink: 'paper' } as const;
  return textAt('!', { x, y: y + halfCapital(sizeMm) }, type, measure, 'middle');
}
