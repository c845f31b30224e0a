import type { Mm } from '../base/units';
import type { Connector } from '../document/connector';
import { pinOf } from '../document/lookup';
import { surenessOf } from '../document/sureness';
import { type Frame, frameOf, further, type WayOut } from './frame';
import { type Line, type Point, type Rect, rectRoundAll } from './geometry';
import type { Measure } from './measure';
import { type NameShape, namesAlong, namesReach } from './names';
import type { Orientation } from './orientation';
import { type OrientedGrid, orientedGrid, type Position } from './oriented-grid';
import { pinText } from './pin-text';
import { cutCorner, shellRound, wallsOf } from './shell';
import { laneWidth, pinSize, SIZES } from './sizes';

export interface PinShape {
  readonly pin: string;
  readonly box: Rect;
  readonly missing: boolean;
  /** Nobody knows what it does, or it was guessed. */
  readonly unsure: boolean;
  /** Type size of the number that fits the square. */
  readonly numberMm: Mm;
}

/** A connector as it is drawn. The same object as long as nothing about it changes. */
export interface Block {
  readonly connector: Connector;
  readonly grid: OrientedGrid;
  readonly frame: Frame;
  readonly rooms: Rooms;
  readonly shell: Rect;
  /** The shell with one corner cut. */
  readonly outline: readonly Point[];
  /** The cut-off corner at pin 1, filled. */
  readonly pinOne: readonly [Point, Point, Point];
  /** Walls of the shroud as lines along the shell, broken where the slot is. */
  readonly walls: readonly Line[];
  readonly pins: readonly PinShape[];
  readonly names: readonly NameShape[];
  readonly leaders: readonly Line[];
  /** How far out the names reach on either way. */
  readonly reach: Readonly<Record<WayOut, Mm>>;
  /** Shell and names together. */
  readonly bounds: Rect;
}

/**
 * How far from the shell names begin on either way, more than usual where a plug hangs over the edge;
 * null where there is no room for them at all.
 */
export type Rooms = Readonly<Record<WayOut, Mm | null>>;
export const USUAL_ROOMS: Rooms = { before: 0, after: 0 };

/** Draws up one connector. Pure: the same input gives the same shapes. */
export function blockOf(connector: Connector, view: Orientation, rooms: Rooms, measure: Measure): Block {
  const grid = orientedGrid(connector, view);
  const frame = frameOf(grid.rows, grid.cols);
  const cells: Rect = {
    x: grid.origin.x - grid.pitchX / 2,
    y: grid.origin.y - grid.pitchY / 2,
    width: grid.cols * grid.pitchX,
    height: grid.rows * grid.pitchY,
  };
  const shell = shellRound(connector, cells, grid.orientation);
  const size = pinSize(grid.pitchX, grid.pitchY);
  const pins = grid.positions.map((position) => pinShape(connector, position, size));
  const setNames = (way: WayOut) => {
    const room = rooms[way];
    if (room === null) return [];
    return namesOn(way, connector, grid, frame, nameEdge(frame, shell, way, room), measure);
  };
  const before = setNames('before');
  const after = setNames('after');
  const names = [...before, ...after];
  const span = frame.outSpan(shell);
  const reach = {
    before: namesReach(before, frame, 'before', span.from - (rooms.before ?? 0)),
    after: namesReach(after, frame, 'after', span.to + (rooms.after ?? 0)),
  };
  const { outline, pinOne } = cutCorner(shell, grid);
  return {
    connector,
    grid,
    frame,
    rooms,
    shell,
    outline,
    pinOne,
    walls: wallsOf(connector, shell, grid.orientation),
    pins,
    names,
    leaders: leadersOf(names, pins, frame),
    reach,
    bounds: rectRoundAll([shell, ...names.map((name) => name.box)]) ?? shell,
  };
}

function pinShape(connector: Connector, position: Position, size: Mm): PinShape {
  const { centre, label } = position;
  const pin = pinOf(connector, label);
  const sureness = surenessOf(pin);
  return {
    pin: label,
    box: { x: centre.x - size / 2, y: centre.y - size / 2, width: size, height: size },
    missing: pin.missing === true,
    unsure: sureness === 'unknown' || sureness === 'guessed',
    numberMm: Math.min(size * 0.6, (size * 1.4) / Math.max(2, [...label].length)),
  };
}

function nameEdge(frame: Frame, shell: Rect, way: WayOut, room: Mm): Mm {
  const span = frame.outSpan(shell);
  return further(way, way === 'before' ? span.from : span.to, SIZES.nameGap + room);
}

/** Names stand on the outermost rows only; a single row has its names before it and its wires after it. */
function namesOn(
  way: WayOut,
  connector: Connector,
  grid: OrientedGrid,
  frame: Frame,
  edge: Mm,
  measure: Measure,
): readonly NameShape[] {
  const depth = frame.tall ? grid.cols : grid.rows;
  if (way === 'after' && depth === 1) return [];
  const outermost = way === 'before' ? 0 : depth - 1;
  const pitch = frame.tall ? grid.pitchY : grid.pitchX;
  const cells = grid.positions
    .filter((position) => (frame.tall ? position.col : position.row) === outermost)
    .map((position) => {
      const middle = frame.along(position.centre);
      const room = { from: middle - pitch / 2 + pitch * 0.03, to: middle + pitch / 2 - laneWidth(pitch) };
      return { pin: position.label, text: pinText(pinOf(connector, position.label)), room, middle };
    });
  return namesAlong(cells, frame, way, edge, measure);
}

/** The names that stand on one way out of a block. */
export function namesOnWay({ names, frame, shell }: Block, way: WayOut): readonly NameShape[] {
  const { from, to } = frame.outSpan(shell);
  return names.filter((name) => frame.outSpan(name.box).from < (from + to) / 2 === (way === 'before'));
}

function leadersOf(names: readonly NameShape[], pins: readonly PinShape[], frame: Frame): readonly Line[] {
  const boxes = new Map(pins.map((pin) => [pin.pin, pin.box]));
  return names.flatMap((name): readonly Line[] => {
    const pin = boxes.get(name.pin);
    if (!pin) return [];
    const from = frame.outSpan(pin);
    const to = frame.outSpan(name.box);
    const along = (frame.alongSpan(pin).from + frame.alongSpan(pin).to) / 2;
    const before = to.from < from.from;
    const tip = before ? to.to + 0.06 : to.from - 0.06;
    return [[frame.point(along, before ? from.from : from.to), frame.point(along, tip)]];
  });
}
