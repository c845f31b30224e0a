import type { Mm } from '../base/units';
import type { HoleState, PlugRef } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import { cellUnder } from '../fit/geometry';
import { landingsOf } from '../fit/landing';
import type { SeatedPlug } from '../fit/seated-plug';
import type { Block, Rooms } from './block';
import { grown, type Point, type Rect, rectRound } from './geometry';
import { pinSize, SIZES } from './sizes';

interface HoleShape {
  readonly hole: string;
  readonly state: HoleState;
  readonly box: Rect;
  /** The pin under it, a missing one included; undefined where the plug hangs over. */
  readonly pin?: string;
}

/** A plug where it sits, or where it would: an outline with its holes. */
export interface PlugShape {
  readonly ref: PlugRef;
  readonly connector: string;
  /** What its flag says: the lead's name, or its own print where the lead has several plugs. */
  readonly name: string;
  readonly body: Rect;
  readonly holes: readonly HoleShape[];
  /** The moulded triangle, pointing at the marked hole. */
  readonly mark?: readonly [Point, Point, Point];
}

/** Draws a plug on a block. The body is all its cells, whether they have a hole or not. */
export function plugShapeOf(seated: SeatedPlug, block: Block): PlugShape {
  const { seat, plug, lead } = seated;
  const { grid } = block;
  const { rows, cols } = plug.grid;
  const corners = [cellUnder(seat, [0, 0]), cellUnder(seat, [rows - 1, cols - 1])];
  const inset = SIZES.plugInset;
  const body = grown(
    rectRound(corners.map((cell) => grid.place(cell).centre)),
    grid.pitchX / 2 - inset,
    grid.pitchY / 2 - inset,
  );
  const size = pinSize(grid.pitchX, grid.pitchY);
  const holes = landingsOf(seated).map((landing): HoleShape => {
    const { x, y } = grid.place(landing.cell).centre;
    const box = { x: x - size / 2, y: y - size / 2, width: size, height: size };
    const shape = { hole: landing.hole, state: landing.state, box };
    return landing.pin ? { ...shape, pin: landing.pin.pin } : shape;
  });
  const marked = plug.mark === undefined ? undefined : gridIndex(plug.grid).cellOf(plug.mark);
  const shape = {
    ref: { lead: lead.id, plug: plug.id },
    connector: block.connector.id,
    name: lead.plugs.length === 1 || plug.print === '' ? lead.name : plug.print,
    body,
    holes,
  };
  if (!marked) return shape;
  return { ...shape, mark: triangleAt(grid.place(cellUnder(seat, marked)).centre, block, size) };
}

/** Beside the pin, on the side that the wires' lane leaves free. */
function triangleAt({ x, y }: Point, block: Block, size: number): readonly [Point, Point, Point] {
  const { frame, grid } = block;
  const pitch = frame.tall ? grid.pitchY : grid.pitchX;
  const base = -(pitch / 2 - SIZES.plugInset * 1.8);
  const tip = -size / 2 - SIZES.plugInset * 0.7;
  const half = (tip - base) * 0.62;
  const along = frame.along({ x, y });
  const out = frame.out({ x, y });
  return [
    frame.point(along + tip, out),
    frame.point(along + base, out - half),
    frame.point(along + base, out + half),
  ];
}

/** The room that plugs over the edge take before names can begin. */
export function roomsBeside(block: Block, seated: readonly SeatedPlug[]): Rooms {
  const shell = block.frame.outSpan(block.shell);
  let before: Mm = 0;
  let after: Mm = 0;
  for (const plug of seated) {
    const body = block.frame.outSpan(plugShapeOf(plug, block).body);
    before = Math.max(before, shell.from - body.from);
    after = Math.max(after, body.to - shell.to);
  }
  return { before, after };
}
