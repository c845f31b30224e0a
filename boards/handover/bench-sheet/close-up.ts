import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import type { Block } from '../../drawing/block';
import { contains, grown, type Point, type Rect, rectRoundAll } from '../../drawing/geometry';
import type { Measure } from '../../drawing/measure';
import { type PlugShape, plugShapeOf } from '../../drawing/plug-shape';
import type { SeatedPlug } from '../../fit/seated-plug';
import type { Strip } from '../page/flow';
import type { Drawn } from '../page/page';
import { DRAWING_SCALE } from '../pinout/drawing-scale';
import { blockOnPaper, drawBlock } from '../pinout/header-drawing';
import { type Tile, tilesOf } from '../pinout/tiles';
import { drawMark, drawPlugBody } from './draw-plugs';
import { drawWires } from './draw-wires';
import { type WireEnd, wireEndsOf } from './wire-ends';
import { layWires, type WireLayout } from './wire-layout';

interface Room {
  readonly widthMm: Mm;
  readonly heightMm: Mm;
}

/** A header with the plugs on it. */
export interface CloseUp {
  /** The parts of the drawing; one, but for a header that is too large for a page. */
  readonly tiles: readonly (Strip & { readonly widthMm: Mm })[];
  /** Whether there are pins whose names, or wires that, stand in the table only. */
  readonly innerRows: boolean;
  readonly hiddenWires: number;
}

/** Draws a header as it lies before the person with its plugs and where their wires go, not to scale. */
export function closeUp(
  build: Build,
  connector: Connector,
  plugs: readonly SeatedPlug[],
  lying: Build['view'],
  room: Room,
  measure: Measure,
): CloseUp {
  const block = blockOnPaper(connector, lying, room, measure, plugs);
  const shapes = plugs.map((seated) => plugShapeOf(seated, block));
  const { ends, hidden } = wireEndsOf(block, plugs);
  const wires = layWires(build, block, ends, measure);
  const whole = { ...block, bounds: boundsOf(block, shapes, wires) };
  const tiles = tilesOf(whole, {
    width: room.widthMm / DRAWING_SCALE,
    height: room.heightMm / DRAWING_SCALE,
  });
  const draw = (cut: Rect) => drawPart(build, whole, shapes, ends, cut, measure);
  return {
    tiles: tiles.map((tile) => tileStrip(tile, room, draw)),
    innerRows: Math.min(block.grid.rows, block.grid.cols) > 2,
    hiddenWires: hidden,
  };
}

/** Everything that is drawn, and room for names that run outward in a part by itself. */
function boundsOf(block: Block, shapes: readonly PlugShape[], { words, brackets }: WireLayout): Rect {
  const names = brackets.map(({ name }) => name.box);
  const all = [block.bounds, ...shapes.map(({ body }) => body), ...words.map(({ box }) => box), ...names];
  return grown(rectRoundAll(all) ?? block.bounds, 0.12);
}

/** A part at the usual scale, or smaller where a plug hangs so far over that it would not fit on the page. */
function tileStrip({ view, cut }: Tile, room: Room, draw: (cut: Rect) => readonly Drawn[]) {
  const scale = Math.min(DRAWING_SCALE, room.widthMm / view.width, room.heightMm / view.height);
  return {
    widthMm: view.width * scale,
    heightMm: view.height * scale,
    draw: (at: Point): readonly Drawn[] => [
      { kind: 'group', at: { x: at.x - view.x * scale, y: at.y - view.y * scale }, scale, items: draw(cut) },
    ],
  };
}

function drawPart(
  build: Build,
  block: Block,
  shapes: readonly PlugShape[],
  ends: readonly WireEnd[],
  cut: Rect,
  measure: Measure,
): readonly Drawn[] {
  const here = ends.filter(({ centre }) => contains(cut, centre));
  return [
    ...drawBlock(
      block,
      cut,
      measure,
      shapes.flatMap((shape) => drawPlugBody(shape, cut)),
    ),
    ...drawWires(layWires(build, block, here, measure), measure),
    ...shapes.flatMap(({ mark }) => (mark && contains(cut, mark[0]) ? [drawMark(mark)] : [])),
  ];
}
