import type { Mm } from '../../base/units';
import { cornersOf, type Point } from '../../drawing/geometry';
import type { Measure } from '../../drawing/measure';
import type { Drawn } from '../page/page';
import { linesOf } from '../page/paragraph';
import { halfCapital, lineHeight, linesAt, TYPES, textAt } from '../page/type';
import { doubtSign } from '../pinout/signs';
import { planKey, type StandoffMark, type StandoffPlan } from '../steps/standoff-plan';

/** How much of the width the figure takes. */
export const FIGURE_MM: Mm = 54;

const MARK_MM: Mm = 1.5;
const ROUND_MM: Mm = 3;

/** A figure with the room it takes; its point is the top left corner. */
export interface Figure {
  readonly heightMm: Mm;
  readonly draw: (at: Point) => readonly Drawn[];
}

/** The board over the standoffs, smaller than it is: which places get one, which stay empty. */
export function standoffFigure(plan: StandoffPlan, measure: Measure): Figure {
  const { board, rear, marks } = plan;
  const scale = (FIGURE_MM - 2 * ROUND_MM) / Math.max(board.width, board.height);
  const [wide, high] = [board.width * scale, board.height * scale];
  const key = linesOf(planKey(marks), FIGURE_MM, TYPES.least, measure);
  return {
    heightMm: 2 * ROUND_MM + high + key.length * lineHeight(TYPES.least),
    draw: ({ x, y }) => {
      const on = (point: Point): Point => ({
        x: x + ROUND_MM + (point.x - board.x) * scale,
        y: y + ROUND_MM + (point.y - board.y) * scale,
      });
      const [from, to] = rear;
      const edge = cornersOf({ ...on(board), width: wide, height: high });
      return [
        {
          kind: 'group',
          title: 'The board over the standoffs of the tray',
          items: [
            { kind: 'shape', points: edge, paint: { fill: 'faint', stroke: { ink: 'ink', widthMm: 0.25 } } },
            { kind: 'line', from: on(from), to: on(to), stroke: { ink: 'ink', widthMm: 0.9 } },
            ...marks.flatMap((mark) => markAt(mark, on(mark.at), x + FIGURE_MM, measure)),
          ],
        },
        ...linesAt(key, { x, y: y + 2 * ROUND_MM + high }, TYPES.least, measure),
      ];
    },
  };
}

/** The sign of a place and its letter, on that side where there is room for it. */
function markAt(
  { kind, label }: StandoffMark,
  centre: Point,
  rightEdge: Mm,
  measure: Measure,
): readonly Drawn[] {
  const off = MARK_MM + 0.8;
  const down = centre.y + halfCapital(TYPES.head.sizeMm);
  const right = textAt(label, { x: centre.x + off, y: down }, TYPES.head, measure);
  const fits = right.at.x + right.widthMm <= rightEdge - 2 * ROUND_MM;
  const word = fits ? right : textAt(label, { x: centre.x - off, y: down }, TYPES.head, measure, 'end');
  return [...signOf(kind, centre, measure), word];
}

function signOf(kind: StandoffMark['kind'], centre: Point, measure: Measure): readonly Drawn[] {
  const { x, y } = centre;
  const ring = { ink: 'ink', widthMm: 0.3 } as const;
  const half = MARK_MM * 0.7;
  switch (kind) {
    case 'set':
      return [{ kind: 'circle', centre, radiusMm: MARK_MM, paint: { fill: 'ink' } }];
    case 'off':
      return doubtSign(centre, MARK_MM, measure);
    case 'without':
      return [
        {
          kind: 'circle',
          centre,
          radiusMm: MARK_MM,
          paint: { fill: 'paper', stroke: { ...ring, dashMm: 0.6 } },
        },
      ];
    case 'empty':
      return [
        { kind: 'circle', centre, radiusMm: MARK_MM, paint: { fill: 'paper', stroke: ring } },
        ...[half, -half].map(
          (rise): Drawn => ({
            kind: 'line',
            from: { x: x - half, y: y - rise },
            to: { x: x + half, y: y + rise },
            stroke: ring,
          }),
        ),
      ];
  }
}
