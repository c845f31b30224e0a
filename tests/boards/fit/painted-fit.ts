import type { Build, Seat } from '../../../boards/document/build';
import { type Connector, SIDES, type Side } from '../../../boards/document/connector';
import type { Plug } from '../../../boards/document/lead';
import { connectorOf, plugOf, samePlug } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import {
  cellOnPaper,
  middleOf,
  type Paint,
  type Point,
  paintAll,
  paintPost,
  quarterTurns,
  rectangleOf,
  type Sheet,
  seatedSheet,
  share,
  sheetOf,
  standingPartOf,
  stands,
  stepX,
  stepY,
} from './squared-paper';

/**
 * The slow obvious answer: everything is painted on squared paper of an eighth of a pitch, and what
 * is painted twice collides. Knows nothing of boxes, tolerances or indexes.
 */
export interface PaintedFit {
  /** Every refusal as a word with what it names, sorted. */
  readonly refusals: readonly string[];
  readonly overhang: readonly string[];
  /** "hole pin" for every hole over a position. */
  readonly over: readonly string[];
}

interface Tried {
  readonly build: Build;
  readonly seat: Seat;
  readonly plug: Plug;
  readonly connector: Connector;
  readonly holes: Sheet;
  readonly pins: Sheet;
}

export function paintedFit(build: Build, seat: Seat): PaintedFit {
  const tried = laidOut(build, seat);
  return {
    refusals: refusalsOf(tried).sort(),
    overhang: overhangOf(tried),
    over: holesOverPins(tried).map(({ hole, pin }) => `${hole} ${pin}`),
  };
}

function laidOut(build: Build, seat: Seat): Tried {
  const plug = plugOf(build, seat);
  const connector = connectorOf(build.board, seat.connector);
  if (!plug || !connector) throw new Error('Not on the bench');
  const holes = seatedSheet(plug, connector, seat);
  return { build, seat, plug, connector, holes, pins: sheetOf(connector) };
}

function refusalsOf(tried: Tried): string[] {
  if (tried.plug.family !== tried.connector.family) return ['family'];
  if (!pitchFits(tried)) return ['pitch'];
  const body = paintAll(tried.holes);
  const past = sidesPast(tried, body);
  return [
    ...ribRefused(tried),
    ...pinsRefused(tried, body),
    ...past.filter((side) => tried.connector.shroud?.walls.includes(side)).map((side) => `wall ${side}`),
    ...(past.length > 0 ? connectorsHit(tried, body) : []),
    ...plugsHit(tried, body),
  ];
}

function holesOverPins({ plug, connector, holes, pins }: Tried) {
  const pinsAt = new Map(
    gridIndex(connector.grid).positions.map(({ label, cell }) => [cellOnPaper(pins, cell).join(), label]),
  );
  return gridIndex(plug.grid).positions.flatMap(({ label, cell }) => {
    const pin = pinsAt.get(cellOnPaper(holes, cell).join());
    return pin === undefined ? [] : [{ hole: label, pin }];
  });
}

function overhangOf({ plug, connector, holes }: Tried): readonly string[] {
  return gridIndex(plug.grid)
    .positions.filter(({ cell }) => !share(rectangleOf(connector), paintPost(holes, cell)))
    .map(({ label }) => label);
}

/** One step along and one step down the plug have to be one step of the connector each. */
function pitchFits({ plug: { grid }, connector, seat: { turn } }: Tried): boolean {
  const plug: Sheet = { grid, origin: [0, 0], turn };
  const pins: Sheet = { grid: connector.grid, origin: [0, 0], turn: 0 };
  if (grid.rows * grid.cols === 1) return stepX(grid) === stepX(connector.grid);
  const length = ([x, y]: Point) => [Math.abs(x), Math.abs(y)].join();
  const steps = [cellOnPaper(pins, [0, 1]), cellOnPaper(pins, [1, 0])].map(length);
  return (
    (grid.cols === 1 || steps.includes(length(cellOnPaper(plug, [0, 1])))) &&
    (grid.rows === 1 || steps.includes(length(cellOnPaper(plug, [1, 0]))))
  );
}

const OUTWARD: Readonly<Record<Side, Point>> = { top: [0, -1], right: [1, 0], bottom: [0, 1], left: [-1, 0] };

function ribRefused({ plug, connector, seat }: Tried): readonly string[] {
  if (!plug.rib || !connector.shroud) return [];
  const facing = quarterTurns(OUTWARD[plug.rib], seat.turn).join();
  const isFaced = (side: Side) => OUTWARD[side].join() === facing;
  const { guide, walls } = connector.shroud;
  if (guide) return isFaced(guide) ? [] : ['guide'];
  return walls.some(isFaced) ? ['rib'] : [];
}

function pinsRefused(tried: Tried, body: Paint): readonly string[] {
  const { plug, connector, pins } = tried;
  const met = holesOverPins(tried).filter(({ pin }) => stands(connector, pin));
  if (met.length === 0) return ['no-pin'];
  const underBody = gridIndex(connector.grid).positions.filter(
    ({ label, cell }) => stands(connector, label) && share(body, paintPost(pins, cell)),
  );
  return [
    ...met
      .filter(({ hole }) => plug.blocked?.includes(hole))
      .map(({ hole, pin }) => `blocked-hole ${hole} ${pin}`),
    ...underBody
      .filter(({ label }) => !met.some(({ pin }) => pin === label))
      .map(({ label }) => `no-hole ${label}`),
  ];
}

/** The sides of the connector past which there is paint, found by turning the paper back under it. */
function sidesPast({ connector: { grid }, pins }: Tried, body: Paint): readonly Side[] {
  const past = new Set<Side>();
  for (const each of body) {
    const [boardX, boardY] = middleOf(each);
    const [x, y] = quarterTurns([boardX - pins.origin[0], boardY - pins.origin[1]], 360 - pins.turn);
    if (y < -stepY(grid) / 2) past.add('top');
    if (x < -stepX(grid) / 2) past.add('left');
    if (y > (grid.rows - 0.5) * stepY(grid)) past.add('bottom');
    if (x > (grid.cols - 0.5) * stepX(grid)) past.add('right');
  }
  return SIDES.filter((side) => past.has(side));
}

function connectorsHit({ build, connector }: Tried, body: Paint): readonly string[] {
  return build.board.connectors
    .filter((other) => other.id !== connector.id && share(body, standingPartOf(other)))
    .map(({ id }) => `obstructed ${id}`);
}

function plugsHit({ build, seat, connector, pins }: Tried, body: Paint): readonly string[] {
  return build.seats.flatMap((taken) => {
    const paint = paintAll(laidOut(build, taken).holes);
    if (samePlug(taken, seat) || !share(body, paint)) return [];
    const both = gridIndex(connector.grid)
      .positions.map(({ label, cell }) => ({ label, post: paintPost(pins, cell) }))
      .filter(({ post }) => share(body, post) && share(paint, post));
    return [`occupied ${taken.lead} ${both.map(({ label }) => label).join(' ')}`];
  });
}
