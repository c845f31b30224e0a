import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import type { Wire } from '../../document/lead';
import { type PinRef, pinOf, unitWith } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import { type Block, blockOf } from '../../drawing/block';
import type { WayOut } from '../../drawing/frame';
import {
  centreOf,
  grown,
  type Line,
  type Point,
  type Rect,
  rectAbout,
  rectRoundAll,
} from '../../drawing/geometry';
import { measureByTable } from '../../drawing/measure';
import { orientationOf } from '../../drawing/orientation';
import { cellUnder } from '../../fit/geometry';
import { landingsOf } from '../../fit/landing';
import type { SeatedPlug } from '../../fit/seated-plug';
import { wiresOf } from './bench-steps';

/** A pin as the close-up shows it, with the wire that comes to it or the probe that is held on it. */
export interface CloseUpPin {
  readonly pin: string;
  readonly box: Rect;
  readonly missing: boolean;
  readonly numberMm: Mm;
  readonly wire?: Pick<Wire, 'colour' | 'stripe'>;
  readonly probe?: Probe;
}

/** Which probe is held on a pin: either where the meter does not mind. */
export type Probe = 'red' | 'black' | 'either';

/** A wire that leaves the header: from its pin out past the shell. */
export interface CloseUpWire {
  readonly wire: Pick<Wire, 'colour' | 'stripe'>;
  readonly line: Line;
  /** Which way it leaves, seen by the person. */
  readonly towards: 'up' | 'down' | 'left' | 'right';
}

/** One header from near by, as it lies before the person; not to scale, and cut off where it is long. */
export interface CloseUp {
  readonly connector: string;
  /** What is seen of the drawing. */
  readonly window: Rect;
  readonly outline: readonly Point[];
  readonly pinOne: readonly Point[];
  readonly walls: readonly Line[];
  readonly pins: readonly CloseUpPin[];
  readonly wires: readonly CloseUpWire[];
  readonly plug?: {
    readonly body: Rect;
    readonly stopped: readonly Rect[];
    readonly mark?: readonly [Point, Point, Point];
  };
  /** Sides at which the header goes on. */
  readonly goesOn: readonly ('left' | 'right' | 'top' | 'bottom')[];
}

/** Every header is drawn at one pitch, so that numbers are as large on a fine one. */
const PITCH: Mm = 2.54;
const PIN: Mm = 1.46;
const NUMBER: Mm = 0.86;
/** Round what is drawn. */
const RIM: Mm = 0.5;
/** Beyond the shell where wires leave, bare and with their words: below or above them, or beside them. */
const ROOM = { bare: 1.2, lines: 3.1, beside: 4.2 } as const satisfies Record<string, Mm>;
const WIRE_OUT: Mm = 0.9;
const AS_DESCRIBED: Build['view'] = { turn: 0, mirrored: false };
/** Positions along one side that are drawn at most: more would be too small to read from two metres. */
const MOST = 10;

/** The header of a seated plug, with the plug over it and its wires; with room for their colours in words or without. */
export function closeUpOfPlug(build: Build, seated: SeatedPlug, words: boolean): CloseUp {
  const block = blockFor(build, seated.connector);
  const { grid } = block;
  const { rows, cols } = seated.plug.grid;
  const corners = [cellUnder(seated.seat, [0, 0]), cellUnder(seated.seat, [rows - 1, cols - 1])];
  const places = corners.map((cell) => grid.place(cell));
  const body = grown(rectRoundAll(places.map(({ centre }) => cellBox(centre))) ?? block.shell, -0.12);
  const wireAt = new Map(wiresOf(seated).flatMap(({ pin, wire }) => (pin ? [[pin.pin, wire] as const] : [])));
  const pins = pinsOf(block).map((pin): CloseUpPin => {
    const wire = wireAt.get(pin.pin);
    return wire ? { ...pin, wire } : pin;
  });
  const marked =
    seated.plug.mark === undefined ? undefined : gridIndex(seated.plug.grid).cellOf(seated.plug.mark);
  const stopped = landingsOf(seated)
    .filter(({ state }) => state === 'blocked')
    .map(({ cell }) => rectAbout(grid.place(cell).centre, PIN * 0.62, PIN * 0.62));
  const wires = wiresOut(block, pins);
  const room = !words ? ROOM.bare : block.frame.tall ? ROOM.beside : ROOM.lines;
  const roomOn = (...ways: readonly string[]) =>
    wires.some(({ towards }) => ways.includes(towards)) ? room : RIM;
  const rooms = { before: roomOn('up', 'left'), after: roomOn('down', 'right') };
  return {
    ...shown(block, pins, places, body, rooms),
    wires,
    plug: {
      body,
      stopped,
      ...(marked && { mark: markAt(grid.place(cellUnder(seated.seat, marked)).centre, block) }),
    },
  };
}

/** A connector with nothing on it. */
export function closeUpOfConnector(build: Build, connector: Connector): CloseUp {
  const block = blockFor(build, connector);
  return { ...shown(block, pinsOf(block), [], block.shell, { before: RIM, after: RIM }), wires: [] };
}

/** The headers that a reading is taken at, with the probes on their pins; most often one. */
export function closeUpsOfProbes(
  build: Build,
  { red, black, mode }: { readonly red: PinRef; readonly black: PinRef; readonly mode: 'ohms' | 'diode' },
): readonly CloseUp[] {
  const ids = [...new Set([red.connector, black.connector])];
  return ids.flatMap((id): readonly CloseUp[] => {
    const connector = build.board.connectors.find((each) => each.id === id);
    if (connector === undefined) return [];
    const block = blockFor(build, connector);
    const on = (ref: PinRef, pin: string) => ref.connector === id && ref.pin === pin;
    const pins = pinsOf(block).map((pin): CloseUpPin => {
      const probe = on(red, pin.pin) ? 'red' : on(black, pin.pin) ? 'black' : undefined;
      return probe ? { ...pin, probe: mode === 'ohms' ? 'either' : probe } : pin;
    });
    const places = block.grid.positions.filter(({ label }) => on(red, label) || on(black, label));
    return [{ ...shown(block, pins, places, block.shell, { before: RIM, after: RIM }), wires: [] }];
  });
}

function blockFor(build: Build, connector: Connector): Block {
  const { rowPitchMm: _, ...grid } = connector.grid;
  const near = {
    ...connector,
    grid: { ...grid, pitchMm: PITCH },
    place: { ...connector.place, xMm: 0, yMm: 0 },
  };
  // Only the board lies as it was left; a unit is seen as it is described.
  const view = unitWith(build, connector.id) ? AS_DESCRIBED : build.view;
  return blockOf(near, orientationOf(view), { before: null, after: null }, measureByTable);
}

function cellBox(centre: Point): Rect {
  return rectAbout(centre, PITCH, PITCH);
}

function pinsOf({ connector, grid }: Block): readonly CloseUpPin[] {
  return grid.positions.map(({ label, centre }) => ({
    pin: label,
    box: rectAbout(centre, PIN, PIN),
    missing: pinOf(connector, label).missing === true,
    numberMm: Math.min(NUMBER, (PIN * 1.5) / Math.max(2, label.length)),
  }));
}

/** The part of a header that is shown: all of it, or as many positions round the ones meant as can be read. */
function shown(
  block: Block,
  pins: readonly CloseUpPin[],
  places: readonly { readonly row: number; readonly col: number }[],
  body: Rect,
  rooms: Readonly<Record<WayOut, Mm>>,
): Omit<CloseUp, 'wires'> {
  const { grid, shell, frame } = block;
  const cols = stretch(
    places.map(({ col }) => col),
    grid.cols,
  );
  const rows = stretch(
    places.map(({ row }) => row),
    grid.rows,
  );
  const round = rectRoundAll([shell, body]) ?? shell;
  const out = frame.outSpan(round);
  const along = frame.alongSpan(round);
  const whole = frame.rect(
    { from: along.from - RIM, to: along.to + RIM },
    { from: out.from - rooms.before, to: out.to + rooms.after },
  );
  const left = cols.from > 0 ? grid.origin.x + (cols.from - 0.5) * PITCH : whole.x;
  const right = cols.to < grid.cols - 1 ? grid.origin.x + (cols.to + 0.5) * PITCH : whole.x + whole.width;
  const top = rows.from > 0 ? grid.origin.y + (rows.from - 0.5) * PITCH : whole.y;
  const bottom = rows.to < grid.rows - 1 ? grid.origin.y + (rows.to + 0.5) * PITCH : whole.y + whole.height;
  const window = { x: left, y: top, width: right - left, height: bottom - top };
  return {
    connector: block.connector.id,
    window,
    outline: block.outline,
    pinOne: block.pinOne,
    walls: block.walls,
    pins: pins.filter(({ box }) => inside(window, centreOf(box))),
    goesOn: [
      ...(cols.from > 0 ? (['left'] as const) : []),
      ...(cols.to < grid.cols - 1 ? (['right'] as const) : []),
      ...(rows.from > 0 ? (['top'] as const) : []),
      ...(rows.to < grid.rows - 1 ? (['bottom'] as const) : []),
    ],
  };
}

function inside({ x, y, width, height }: Rect, point: Point): boolean {
  return point.x > x && point.x < x + width && point.y > y && point.y < y + height;
}

/** The run of positions to show: all where they are few, otherwise those meant and as many beside them as there is room for. */
function stretch(meant: readonly number[], count: number): { readonly from: number; readonly to: number } {
  if (count <= MOST + 2 || meant.length === 0) return { from: 0, to: count - 1 };
  const low = Math.max(0, Math.min(...meant));
  const high = Math.min(count - 1, Math.max(...meant));
  const spare = Math.max(0, MOST - (high - low + 1));
  const from = Math.max(0, Math.min(low - Math.floor(spare / 2), count - MOST));
  return { from: Math.min(from, low), to: Math.max(high, Math.min(count - 1, from + MOST - 1)) };
}

/** Wires of the outer rows leave straight out; those of rows between would cross pins, and are told in words only. */
function wiresOut({ frame, grid, shell }: Block, pins: readonly CloseUpPin[]): readonly CloseUpWire[] {
  const depth = frame.tall ? grid.cols : grid.rows;
  const out = frame.outSpan(shell);
  return pins.flatMap(({ box, wire }): readonly CloseUpWire[] => {
    if (wire === undefined) return [];
    const centre = centreOf(box);
    const at = Math.round((frame.out(centre) - frame.out(grid.origin)) / PITCH);
    if (at !== 0 && at !== depth - 1) return [];
    const before = depth > 1 && at === 0;
    const along = frame.along(centre);
    const pin = frame.outSpan(box);
    const from = frame.point(along, before ? pin.from : pin.to);
    const to = frame.point(along, before ? out.from - WIRE_OUT : out.to + WIRE_OUT);
    const towards = frame.tall ? (before ? 'left' : 'right') : before ? 'up' : 'down';
    return [{ wire, line: [from, to], towards }];
  });
}

/** The moulded triangle, in the body beside the marked hole and pointing at it. */
function markAt(centre: Point, { frame }: Block): readonly [Point, Point, Point] {
  const along = frame.along(centre);
  const out = frame.out(centre);
  const [tip, base, half] = [-PIN / 2 - 0.04, -PITCH / 2 + 0.16, 0.42];
  return [
    frame.point(along + tip, out),
    frame.point(along + base, out - half),
    frame.point(along + base, out + half),
  ];
}
