import type { Rect } from '../../drawing/geometry';
import type { Measure } from '../../drawing/measure';
import type { Fill } from '../page/inks';
import type { Drawn } from '../page/page';
import { pen } from '../pinout/drawing-scale';
import { drawName } from '../pinout/header-names';
import type { LaidWire, WireLayout } from './wire-layout';

/** Wires in their colours with ink round them, the words of the colours, and what gathers a plug's wires. */
export function drawWires({ wires, words, brackets }: WireLayout, measure: Measure): readonly Drawn[] {
  return [
    ...wires.flatMap(drawWire),
    ...words.flatMap((word) => drawName(word, measure)),
    ...brackets.flatMap(({ line: [from, to], name }): readonly Drawn[] => [
      { kind: 'line', from, to, stroke: { ink: 'soft', widthMm: pen(0.35) } },
      ...drawName(name, measure),
    ]),
  ];
}

/** The outline of all legs first, then their fill: where legs meet there is no line. */
function drawWire({ end: { wire }, legs, stripes }: LaidWire): readonly Drawn[] {
  const outline = legs.map((box): Drawn => {
    return { kind: 'rect', box, paint: { fill: 'ink', stroke: { ink: 'ink', widthMm: pen(0.5) } } };
  });
  return [
    ...outline,
    ...legs.map(filled(`wire-${wire.colour}`)),
    ...(wire.stripe === undefined ? [] : stripes.map(filled(`wire-${wire.stripe}`))),
  ];
}

function filled(fill: Fill): (box: Rect) => Drawn {
  return (box) => ({ kind: 'rect', box, paint: { fill } });
}
