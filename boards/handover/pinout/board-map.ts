import type { Mm } from '../../base/units';
import type { BoardSheet } from '../../document/board-sheet';
import type { Connector } from '../../document/connector';
import {
  centreOf,
  cornersOf,
  type Point,
  type Rect,
  rectAbout,
  rectRound,
  rectRoundAll,
} from '../../drawing/geometry';
import { holesOf } from '../../drawing/holes';
import type { Measure } from '../../drawing/measure';
import { type Orientation, orientationOf, oriented } from '../../drawing/orientation';
import { connectorBox } from '../../fit/geometry';
import { pinPoints } from '../../fit/pin-points';
import type { Strip } from '../page/flow';
import type { Drawn } from '../page/page';
import { halfCapital, lineHeight, TYPES, textAt } from '../page/type';
import { topEdgeOf } from './lying-words';
import { freePlaces } from './map-places';
import type { PinoutOptions } from './options';

/** Room on every side for the words at the top edge and for numbers that stand outside. */
const RIM_MM: Mm = 7;
/** Pins are only drawn where they can be told apart. */
const LEAST_PIN_PITCH_MM: Mm = 0.7;
const MOST_PINS = 5_000;

export interface MapOptions {
  readonly lying: Pick<PinoutOptions, 'turn' | 'mirrored'>;
  readonly room: { readonly widthMm: Mm; readonly heightMm: Mm };
  /** The number that a connector has on these pages; those without one are not printed further on. */
  readonly numberOf: ReadonlyMap<Connector, number>;
}

/** The whole board as it lies: its outline, and every connector where it stands, with its number. */
export function boardMap(board: BoardSheet, options: MapOptions, measure: Measure): Strip {
  const { lying, room, numberOf } = options;
  const view = orientationOf(lying);
  const outline = rectOf(view, 0, 0, board.outline.widthMm, board.outline.depthMm);
  const shells = board.connectors.map((connector) => {
    const { leftMm, topMm, rightMm, bottomMm } = connectorBox(connector);
    return { connector, shell: rectOf(view, leftMm, topMm, rightMm, bottomMm) };
  });
  const all = rectRoundAll([outline, ...shells.map(({ shell }) => shell)]) ?? outline;
  const scale = Math.min((room.widthMm - 2 * RIM_MM) / all.width, (room.heightMm - 2 * RIM_MM) / all.height);
  const heightMm = all.height * scale + 2 * RIM_MM;
  return {
    heightMm,
    draw: (at) => {
      const left = at.x + (room.widthMm - all.width * scale) / 2;
      const onPaper = (point: Point): Point => ({
        x: left + (point.x - all.x) * scale,
        y: at.y + RIM_MM + (point.y - all.y) * scale,
      });
      const placed = shells.map(({ connector, shell }) => ({ connector, shell: moved(shell, onPaper) }));
      const edge = moved(outline, onPaper);
      return [
        {
          kind: 'group',
          title: `The board ${board.name} with its connectors`,
          items: [
            { kind: 'rect', box: edge, paint: { stroke: { ink: 'ink', widthMm: 0.5 } } },
            ...holesOf(board.outline, view).map(
              ({ centre, radius }): Drawn => ({
                kind: 'circle',
                centre: onPaper(centre),
                radiusMm: radius * scale,
                paint: { stroke: { ink: 'line', widthMm: 0.2 } },
              }),
            ),
            topEdgeWords(edge, lying, measure),
            ...placed.flatMap(({ connector, shell }) => drawShell(connector, shell, numberOf.has(connector))),
            ...drawPins(board, view, scale, onPaper),
            ...drawNumbers(placed, numberOf, edge, measure),
          ],
        },
      ];
    },
  };
}

interface PlacedShell {
  readonly connector: Connector;
  readonly shell: Rect;
}

function rectOf(view: Orientation, left: Mm, top: Mm, right: Mm, bottom: Mm): Rect {
  return rectRound([oriented(view, { x: left, y: top }), oriented(view, { x: right, y: bottom })]);
}

function moved(rect: Rect, onPaper: (point: Point) => Point): Rect {
  return rectRound(cornersOf(rect).map(onPaper));
}

function drawShell(connector: Connector, box: Rect, printed: boolean): readonly Drawn[] {
  const stroke = printed
    ? ({ ink: 'ink', widthMm: 0.25 } as const)
    : ({ ink: 'line', widthMm: 0.15 } as const);
  const fill = printed ? 'faint' : 'paper';
  const title = `${connector.print || connector.id}: ${connector.title}`;
  return [{ kind: 'group', title, items: [{ kind: 'rect', box, paint: { fill, stroke } }] }];
}

/** Every pin as a spot, pin 1 larger and square; none where they would run together. */
function drawPins(
  { connectors }: BoardSheet,
  view: Orientation,
  scale: number,
  onPaper: (point: Point) => Point,
): readonly Drawn[] {
  const drawn: Drawn[] = [];
  for (const connector of connectors) {
    const pitch = connector.grid.pitchMm * scale;
    for (const [index, { centre, stands }] of pinPoints(connector).entries()) {
      const at = onPaper(oriented(view, { x: centre.xMm, y: centre.yMm }));
      if (index === 0)
        drawn.push({ kind: 'rect', box: rectAbout(at, ...square(pitch)), paint: { fill: 'ink' } });
      else if (stands && pitch >= LEAST_PIN_PITCH_MM)
        drawn.push({ kind: 'circle', centre: at, radiusMm: pitch * 0.16, paint: { fill: 'line' } });
      if (drawn.length > MOST_PINS) return [];
    }
  }
  return drawn;
}

function square(pitch: Mm): readonly [Mm, Mm] {
  const side = Math.max(0.5, pitch * 0.55);
  return [side, side];
}

/** Numbers beside their connectors, each where nothing else stands, with a line where it is not near. */
function drawNumbers(
  placed: readonly PlacedShell[],
  numberOf: ReadonlyMap<Connector, number>,
  board: Rect,
  measure: Measure,
): readonly Drawn[] {
  const numbered = placed.filter(({ connector }) => numberOf.has(connector));
  const type = TYPES.head;
  const texts = numbered.map(({ connector }) => String(numberOf.get(connector)));
  const sizes = texts.map((text) => ({
    width: measure(text, type.sizeMm, type.face) + 0.8,
    height: lineHeight(type) * 0.85,
  }));
  const room = {
    x: board.x - RIM_MM,
    y: board.y - 2,
    width: board.width + 2 * RIM_MM,
    height: board.height + 4,
  };
  const boxes = freePlaces(
    numbered.map(({ shell }, index) => ({ shell, size: sizes[index] ?? { width: 3, height: 3 } })),
    placed.map(({ shell }) => shell),
    room,
  );
  return boxes.flatMap((box, index): readonly Drawn[] => {
    const text = texts[index] ?? '';
    const shell = numbered[index]?.shell;
    if (!box || !shell) return [];
    const { x, y } = centreOf(box);
    const number = textAt(text, { x, y: y + halfCapital(type.sizeMm) }, type, measure, 'middle');
    return [...leader(box, shell), number];
  });
}

function leader(box: Rect, shell: Rect): readonly Drawn[] {
  const from = nearestPoint(shell, centreOf(box));
  const to = nearestPoint(box, from);
  if (Math.hypot(from.x - to.x, from.y - to.y) < 1.2) return [];
  return [{ kind: 'line', from, to, stroke: { ink: 'line', widthMm: 0.15 } }];
}

function nearestPoint({ x, y, width, height }: Rect, to: Point): Point {
  return { x: Math.min(Math.max(to.x, x), x + width), y: Math.min(Math.max(to.y, y), y + height) };
}

/** Says which edge of the outline is the board's own top. */
function topEdgeWords(board: Rect, lying: MapOptions['lying'], measure: Measure): Drawn {
  const type = TYPES.least;
  const text = 'top edge of the board';
  const middle = centreOf(board);
  const off = 1.6;
  const high = 2 * halfCapital(type.sizeMm);
  switch (topEdgeOf(lying)) {
    case 'top':
      return textAt(text, { x: middle.x, y: board.y - off }, type, measure, 'middle');
    case 'bottom':
      return textAt(text, { x: middle.x, y: board.y + board.height + off + high }, type, measure, 'middle');
    case 'left':
      return { ...textAt(text, { x: board.x - off, y: middle.y }, type, measure, 'middle'), upright: true };
    case 'right': {
      const x = board.x + board.width + off + high;
      return { ...textAt(text, { x, y: middle.y }, type, measure, 'middle'), upright: true };
    }
  }
}
