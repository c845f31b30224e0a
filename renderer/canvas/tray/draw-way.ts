import type { Line, Point } from '../../../boards/drawing/geometry';
import { type Pen, stroke, traceLine } from '../drawing/pen';
import { drawMark } from './draw-draft';
import type { PathShape } from './path-shapes';
import type { WayShown } from './tray-props';

/** The lines of a way that is being chosen: what is taken, what may come next, and where that leads. */
export interface WayLines {
  readonly taken: readonly Line[];
  readonly next: readonly Line[];
  readonly marks: readonly Point[];
}

/**
 * @param paths every path that a cable may lie along, as it is drawn
 * @param fromOf the place where each path begins, by its id
 */
export function wayLines(
  { paths: taken, next, at }: WayShown,
  paths: readonly PathShape[],
  fromOf: ReadonlyMap<string, string>,
): WayLines {
  const shapes = new Map(paths.map((shape) => [shape.id, shape]));
  const shapesOf = (ids: readonly string[]) => ids.flatMap((id) => shapes.get(id) ?? []);
  return {
    taken: shapesOf(taken).map(({ line }) => line),
    next: shapesOf(next).map(({ line }) => line),
    marks: shapesOf(next).map(({ id, line: [start, end] }) => (fromOf.get(id) === at ? end : start)),
  };
}

/** What is taken as a thick line, what may come next broken, with a mark where it leads to. */
export function drawWay(pen: Pen, { taken, next, marks }: WayLines): void {
  const { context, palette } = pen;
  const band = (lines: readonly Line[], style: string, pixels: number) => {
    context.beginPath();
    for (const line of lines) traceLine(context, line);
    context.strokeStyle = style;
    context.lineWidth = stroke(pen, pixels);
    context.stroke();
  };
  context.lineCap = 'round';
  band(taken, palette.panel, 10);
  band(taken, palette.select, 6);
  context.lineCap = 'butt';
  band(next, palette.panel, 5);
  context.setLineDash([stroke(pen, 6), stroke(pen, 4)]);
  band(next, palette.select, 2.5);
  context.setLineDash([]);
  for (const mark of marks) drawMark(pen, mark);
}
