import type { PlugRef } from '../../../boards/document/lookup';
import { grown, overlap } from '../../../boards/drawing/geometry';
import { type Pen, stroke, traceLine } from '../drawing/pen';
import { liesAlong, type StretchShape } from './cable-shapes';
import { drawnFar } from './draw-signs';

/** A cable is never drawn thinner than it can be seen. */
const LEAST_PX = 4;
const CHOSEN_PX = 5;

/** The cables of one side: as thick as they are with ink on both sides, or a faint band about a broken line. */
export function drawCables(pen: Pen, stretches: readonly StretchShape[], near: boolean): void {
  const { context, palette } = pen;
  const shown = stretches.filter((each) => each.near === near && overlap(grown(each.box, 20), pen.window));
  const band = (style: string, widthOf: (stretch: StretchShape) => number) => {
    context.strokeStyle = style;
    for (const stretch of shown) {
      context.beginPath();
      traceLine(context, stretch.line);
      context.lineWidth = widthOf(stretch);
      context.stroke();
    }
  };
  const widthOf = ({ widthMm }: StretchShape) => Math.max(widthMm, stroke(pen, LEAST_PX));
  context.lineCap = near ? 'round' : 'butt';
  if (near) {
    band(palette.ink, widthOf);
    band(palette.plug, (each) => Math.max(widthOf(each) - stroke(pen, 2), stroke(pen, 1.5)));
  } else {
    context.globalAlpha = 0.25;
    band(palette.inkSoft, widthOf);
    drawnFar(pen, near, () => band(palette.inkSoft, () => stroke(pen, 2)));
  }
  context.lineCap = 'butt';
}

/**
 * The chosen cable from end to end, along the middle of the bundles that it lies in: whole on the side looked
 * at, broken on the other.
 */
export function drawChosenCable(pen: Pen, stretches: readonly StretchShape[], run: PlugRef): void {
  const { context, palette } = pen;
  const own = stretches.filter((each) => liesAlong(each, run));
  context.lineCap = 'round';
  for (const [style, beyond] of [
    [palette.panel, 3],
    [palette.select, 0],
  ] as const) {
    context.strokeStyle = style;
    for (const { line, near } of own) {
      context.beginPath();
      traceLine(context, line);
      context.setLineDash(near || beyond > 0 ? [] : [stroke(pen, 6), stroke(pen, 6)]);
      context.lineWidth = stroke(pen, CHOSEN_PX + beyond);
      context.stroke();
    }
  }
  context.setLineDash([]);
  context.lineCap = 'butt';
}
