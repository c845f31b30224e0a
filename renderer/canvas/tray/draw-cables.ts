import type { PlugRef } from '../../../boards/document/lookup';
import { grown, overlap } from '../../../boards/drawing/geometry';
import { type Pen, stroke, traceLine } from '../drawing/pen';
import { liesAlong, type StretchShape } from './cable-shapes';
import { drawnFar } from './draw-signs';

/** A cable is never drawn thinner than it can be seen. */
const LEAST_PX = 4;

/** The cables of one side as thick as they are, each with a line of ink on both sides. */
export function drawCables(pen: Pen, stretches: readonly StretchShape[], near: boolean): void {
  const { context, palette } = pen;
  const shown = stretches.filter((each) => each.near === near && overlap(grown(each.box, 20), pen.window));
  // On the other side the dashes would be all outline: there a cable is one broken line.
  const inked = near ? [palette.ink, palette.plug] : [palette.inkSoft];
  drawnFar(pen, near, () => {
    context.lineCap = near ? 'round' : 'butt';
    inked.forEach((style, at) => {
      context.strokeStyle = style;
      for (const { line, widthMm } of shown) {
        context.beginPath();
        traceLine(context, line);
        const width = Math.max(widthMm, stroke(pen, LEAST_PX));
        context.lineWidth = at === 0 ? width : Math.max(width - stroke(pen, 2), stroke(pen, 1.5));
        context.stroke();
      }
    });
    context.lineCap = 'butt';
  });
}

/** The chosen cable from end to end, seen on every colour: whole on the side looked at, broken on the other. */
export function drawChosenCable(pen: Pen, stretches: readonly StretchShape[], run: PlugRef): void {
  const { context, palette } = pen;
  const own = stretches.filter((each) => liesAlong(each, run));
  context.lineCap = 'round';
  for (const [style, beyond] of [
    [palette.panel, 3],
    [palette.select, 0],
  ] as const) {
    context.strokeStyle = style;
    for (const { line, widthMm, near } of own) {
      context.beginPath();
      traceLine(context, line);
      context.setLineDash(near || beyond > 0 ? [] : [stroke(pen, 6), stroke(pen, 6)]);
      context.lineWidth = Math.max(widthMm, stroke(pen, LEAST_PX + 1)) + stroke(pen, beyond);
      context.stroke();
    }
  }
  context.setLineDash([]);
  context.lineCap = 'butt';
}
