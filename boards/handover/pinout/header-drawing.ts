import type { Mm } from '../../base/units';
import type { Connector } from '../../document/connector';
import { rowPitchOf } from '../../document/grid';
import { pinOf } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import { pinWords } from '../../document/pin-words';
import { type Block, blockOf, USUAL_ROOMS } from '../../drawing/block';
import { contains, type Point, type Rect } from '../../drawing/geometry';
import type { Measure } from '../../drawing/measure';
import { orientationOf } from '../../drawing/orientation';
import { roomsBeside } from '../../drawing/plug-shape';
import type { SeatedPlug } from '../../fit/seated-plug';
import type { Strip } from '../page/flow';
import type { Drawn } from '../page/page';
import { DRAWING_SCALE } from './drawing-scale';
import { drawNames } from './header-names';
import { drawPin } from './header-pins';
import { drawShell } from './header-shell';
import type { PinoutOptions } from './options';
import { tilesOf } from './tiles';

/** Pins stand this far apart at least, so that their numbers can be read, and at most, to save paper. */
const LEAST_PITCH_MM: Mm = 8.2;
const MOST_PITCH_MM: Mm = 13;
/** Rows with their names beside them can stand nearer. */
const LEAST_ROW_PITCH_MM: Mm = 6.6;
const MOST_ROW_PITCH_MM: Mm = 9.5;
/** Of a label, so that its letters are set at 6 points or more in a square that takes 0.44 of the pitch. */
const PITCH_PER_DIGIT_MM: Mm = 3.45;
const MOST_NUMBER_PITCH_MM: Mm = 21;

interface Drawing {
  /** The parts of the drawing; one, but for a connector that is too large for a page. */
  readonly tiles: readonly (Strip & { readonly widthMm: Mm })[];
  /** Whether there are pins whose names stand in the table only. */
  readonly innerRows: boolean;
}

/**
 * Draws a header as it lies before the person, not to scale: as large as the room lets it be. Pins too
 * many for the room are drawn in parts, one below the other.
 */
export function headerDrawing(
  connector: Connector,
  lying: Pick<PinoutOptions, 'turn' | 'mirrored'>,
  room: { readonly widthMm: Mm; readonly heightMm: Mm },
  measure: Measure,
): Drawing {
  const block = blockOnPaper(connector, lying, room, measure);
  const { grid } = block;
  const tiles = tilesOf(block, {
    width: room.widthMm / DRAWING_SCALE,
    height: room.heightMm / DRAWING_SCALE,
  });
  return {
    tiles: tiles.map(({ view, cut }) => ({
      widthMm: view.width * DRAWING_SCALE,
      heightMm: view.height * DRAWING_SCALE,
      draw: (at: Point): readonly Drawn[] => [
        {
          kind: 'group',
          at: { x: at.x - view.x * DRAWING_SCALE, y: at.y - view.y * DRAWING_SCALE },
          scale: DRAWING_SCALE,
          items: drawBlock(block, cut, measure),
        },
      ],
    })),
    innerRows: Math.min(grid.rows, grid.cols) > 2,
  };
}

/**
 * The connector at a pitch that suits the paper; the proportions of the pitches are kept.
 *
 * @param seated plugs on it: names begin further out where one hangs over the edge
 */
export function blockOnPaper(
  connector: Connector,
  lying: Pick<PinoutOptions, 'turn' | 'mirrored'>,
  room: { readonly widthMm: Mm; readonly heightMm: Mm },
  measure: Measure,
  seated: readonly SeatedPlug[] = [],
): Block {
  const { grid, place } = connector;
  const view = orientationOf(lying);
  const across = (place.turn + lying.turn) % 180 !== 0;
  const [rows, cols] = across ? [grid.cols, grid.rows] : [grid.rows, grid.cols];
  const ratio = Math.min(1.6, Math.max(0.7, rowPitchOf(grid) / grid.pitchMm));
  const walls = connector.shroud === undefined ? 3 : 14;
  const free = rows > cols ? (room.heightMm - walls) / rows : (room.widthMm - walls) / cols;
  const longest = Math.max(1, ...gridIndex(grid).positions.map(({ label }) => label.length));
  const numbers = Math.min(MOST_NUMBER_PITCH_MM, longest * PITCH_PER_DIGIT_MM);
  const [least, most] =
    rows > cols ? [LEAST_ROW_PITCH_MM, MOST_ROW_PITCH_MM] : [LEAST_PITCH_MM, MOST_PITCH_MM];
  const pitch = Math.max(least, numbers, Math.min(most, free));
  // `pitch` is that along the block's longer side as it lies; the other follows by the ratio.
  const alongCols = across === rows > cols;
  const pitchMm = (alongCols ? pitch : pitch / ratio) / DRAWING_SCALE;
  const onPaper: Connector = {
    ...connector,
    grid: { ...grid, pitchMm, rowPitchMm: pitchMm * ratio },
    place: { xMm: 0, yMm: 0, turn: place.turn },
  };
  const usual = blockOf(onPaper, view, USUAL_ROOMS, measure);
  return seated.length === 0 ? usual : blockOf(onPaper, view, roomsBeside(usual, seated), measure);
}

/** @param laid what lies on the shell, below pins and names: the bodies of plugs */
export function drawBlock(
  block: Block,
  cut: Rect,
  measure: Measure,
  laid: readonly Drawn[] = [],
): readonly Drawn[] {
  const pins = block.pins.filter(({ box }) =>
    contains(cut, { x: box.x + box.width / 2, y: box.y + box.height / 2 }),
  );
  const here = new Set(pins.map(({ pin }) => pin));
  return [
    ...drawShell(block, cut),
    ...laid,
    ...drawNames(block, here, measure),
    ...pins.map((shape): Drawn => {
      const pin = pinOf(block.connector, shape.pin);
      return {
        kind: 'group',
        title: `Pin ${shape.pin}: ${pinWords(pin)}`,
        items: drawPin(shape, pin, measure),
      };
    }),
  ];
}
